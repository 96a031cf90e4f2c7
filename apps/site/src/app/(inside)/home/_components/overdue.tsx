'use client';
import { useNow } from '../../../../times/use-now.ts';
import { useZone } from '../../../../times/when.tsx';
import { homeWords } from '../../../../words/home.ts';
import { daysOverdue } from './days-overdue.ts';

/** How long something is overdue by the reader's calendar; nothing on its day and before. */
export function Overdue({ dueAt }: { dueAt: string }) {
  const now = useNow(3_600_000);
  const days = daysOverdue(dueAt, new Date(now), useZone());
  if (days < 1) return null;
  return <strong suppressHydrationWarning>, {homeWords.overdue(days)}</strong>;
}
