'use client';
import { useEffect, useState } from 'react';
import { openDecodedFrames } from './decoded-frames.ts';
import { readFrameTable } from './frame-table.ts';
import { cachePictures, type PictureCache } from './picture-cache.ts';
import { openVideoFrames } from './video-frames.ts';

export type OpenClip = { readonly timesS: readonly number[]; readonly pictures: PictureCache };
export type ClipOpening = { kind: 'opening' } | { kind: 'open'; clip: OpenClip } | { kind: 'failed' };

/** Where the frame times of a rendition lie: beside it. */
export const frameTimesBeside = (rendition: string): string => rendition.replace(/[^/]+$/, 'frames.json');

/** Opens a rendition for exact stepping and closes it with the component. */
export const useClip = (rendition: string | null): ClipOpening => {
  const [opening, setOpening] = useState<ClipOpening>({ kind: 'opening' });
  useEffect(() => {
    if (rendition === null) return;
    const leaving = new AbortController();
    let open: PictureCache | null = null;
    const start = async () => {
      const { timesS } = await readFrameTable(frameTimesBeside(rendition), leaving.signal);
      const source =
        (await openDecodedFrames(rendition, timesS)) ?? (await openVideoFrames(rendition, timesS));
      const pictures = cachePictures(source);
      if (leaving.signal.aborted) return pictures.close();
      open = pictures;
      setOpening({ kind: 'open', clip: { timesS, pictures } });
    };
    setOpening({ kind: 'opening' });
    start().catch(() => !leaving.signal.aborted && setOpening({ kind: 'failed' }));
    return () => {
      leaving.abort();
      open?.close();
    };
  }, [rendition]);
  return opening;
};
