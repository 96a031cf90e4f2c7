'use client';
import { useSyncExternalStore } from 'react';
import { useReader } from './reader.tsx';

const formats = {
  day: { weekday: 'short', day: 'numeric', month: 'short' },
  moment: { weekday: 'short', day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' },
  clock: { hour: '2-digit', minute: '2-digit' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

const never = () => () => undefined;

/** The zone to write times in: the academy's while the page is made, the reader's own once it runs there. */
export const useZone = (): string => {
  const { zone } = useReader();
  return useSyncExternalStore(
    never,
    () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    () => zone,
  );
};

/** An instant in the reader's zone. */
export function When({ at, as = 'moment' }: { at: string; as?: keyof typeof formats }) {
  const timeZone = useZone();
  const words = new Intl.DateTimeFormat('en-GB', { ...formats[as], hourCycle: 'h23', timeZone }).format(
    new Date(at),
  );
  return (
    <time dateTime={at} suppressHydrationWarning>
      {words}
    </time>
  );
}
