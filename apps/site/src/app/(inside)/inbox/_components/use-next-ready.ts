'use client';
import { useRouter } from 'next/navigation';
import { useEffect } from 'react';
import { type Item, pathOfItem } from './use-inbox.ts';

/** A selection that stays for so long is probably opened next. */
const restMs = 600;

/** The clip of a row: its picture lies in the same folder as the film and the table of its frames. */
const filesOf = (item: Item | undefined): string[] => {
  if (item?.kind !== 'swing' || item.poster === null) return [];
  const folder = item.poster.slice(0, item.poster.lastIndexOf('/'));
  return ['frames.json', 'rendition.mp4'].map((file) => `${folder}/${file}`);
};

/**
 * While nothing happens, brings what the selected row and the one after it need into the browser's own store, so that the
 * review opens with its clip at hand. It gives way to everything else and is dropped when the selection moves on.
 */
export const useNextReady = (items: readonly Item[], currentId: string | null): void => {
  const router = useRouter();
  const at = items.findIndex(({ id }) => id === currentId);
  const [current, after] = [items[at], items[at + 1]];
  const path = current === undefined ? null : pathOfItem(current);
  const files = [...filesOf(current), ...filesOf(after)].join(' ');
  useEffect(() => {
    const stopping = new AbortController();
    const bring = async () => {
      if (path !== null) router.prefetch(path);
      for (const file of files.split(' ').filter(Boolean)) {
        const answer = await fetch(file, { signal: stopping.signal, priority: 'low' });
        await answer.arrayBuffer();
      }
    };
    // What could not be brought now is read when the review opens.
    const timer = setTimeout(() => void bring().catch(() => undefined), restMs);
    return () => {
      clearTimeout(timer);
      stopping.abort();
    };
  }, [path, files, router]);
};
