'use client';
import { useSyncExternalStore } from 'react';
import { type InstantKind, instantFormat } from './instant-format.ts';
import { useReader } from './reader.tsx';

const never = () => () => undefined;

let own: string | undefined;
/** Asked once: every time on a page asks for it again, and nobody changes it while reading. */
const ownZone = (): string => {
  own ??= Intl.DateTimeFormat().resolvedOptions().timeZone;
  return own;
};

/** The zone to write times in: the academy's while the page is made, the reader's own once it runs there. */
export const useZone = (): string => {
  const { zone } = useReader();
  return useSyncExternalStore(never, ownZone, () => zone);
};

/** An instant in the reader's zone. */
export function When({ at, as = 'moment' }: { at: string; as?: InstantKind }) {
  const timeZone = useZone();
  const words = instantFormat(as, timeZone).format(new Date(at));
  return (
    <time dateTime={at} suppressHydrationWarning>
      {words}
    </time>
  );
}
