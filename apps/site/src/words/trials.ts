import type { Reply } from '@ballfirst/contracts/client';
import { hoursInWords } from './times.ts';

type Trial = Reply<'readTrials'>['items'][number];

export const trialsWords = {
  title: 'Trials',
  lead: 'Open trials, the one that ends first at the head: where each stands still, and what to do about it.',
  shareTitle: 'Trials that became paid',
  share: (paid: number, trials: number) => `${paid} of ${trials}`,
  interval: (low: string, high: string) =>
    `With so few trials the true share may lie anywhere from ${low} to ${high} (95 %).`,
  intervalMany: (low: string, high: string) => `The true share lies between ${low} and ${high} (95 %).`,
  line: (share: string, low: string, high: string) =>
    `A line from 0 to 100 percent: ${share} became paid, with a bracket from ${low} to ${high}`,
  incidenceTitle: 'By day of the trial',
  incidence: (low: string, high: string, trials: number, open: number) =>
    `of trials become paid by a week after their end (95 %: ${low} to ${high}). From ${trials} trials; ${open} of them may still join.`,
  incidenceLine: (share: string, low: string, high: string) =>
    `A stair that rises by day of the trial to ${share}, in a band from ${low} to ${high}`,
  incidenceHint:
    'Day of the trial from left to right. Leaving and lapsing count as other ends; a trial that is open, or ended less than a week ago, counts for as long as it has run.',
  matured: 'Counted one week after each trial has ended, so that none is judged early.',
  noneMatured: 'No trial has run its course yet. The share appears here one week after the first one ends.',
  openTitle: 'Open trials',
  emptyTitle: 'No open trials',
  empty: 'Nobody is on trial at the moment. People who join through your sign-up page appear here.',
  day: (day: number, days: number) => (day === 0 ? `Not begun, ${days} days` : `Day ${day} of ${days}`),
  dayLine: (day: number, days: number) => `Day ${day} of ${days} of the trial`,
  ends: 'ends',
  wouldEnd: 'begins with the first swing',
  firstSwing: 'First swing',
  reply: 'First reply',
  replyTook: (hours: number) =>
    hours < 0.05 ? 'outside working hours' : `after ${hoursInWords(hours)} of working time`,
  read: 'Reply read',
  practice: 'Practice',
  practised: (entries: number, rungs: number) =>
    `${entries} ${entries === 1 ? 'entry' : 'entries'}, ${rungs} ${rungs === 1 ? 'step' : 'steps'} passed`,
  notYet: 'Not yet',
  stops: {
    'no-first-swing': 'No first swing',
    'waits-for-us': 'Waits for our answer',
    'reply-unread': 'Reply not read',
    held: 'On hold because of pain',
    'no-practice': 'No practice since the reply',
    moving: 'Moving on',
    ending: 'About to end',
  } satisfies Record<Trial['stop'], string>,
  unusable: 'First video not usable',
  next: 'Next:',
  setPaid: 'Set to paid',
  setPaidFor: (name: string) => `Set to paid: ${name}`,
  confirm: (name: string) => `${name} has joined and pays?`,
  reason: 'Reason',
  reasonFirst: 'Joined after the trial',
  yes: 'Yes, set to paid',
  setting: 'Setting …',
  no: 'Not yet, go back',
  done: (name: string) => `${name} is now paid.`,
  further: 'Further down the list',
  top: 'Back to the top',
} as const;

/** A share from 0 to 1 in whole percent. */
export const percentInWords = (share: number): string => `${Math.round(share * 100)}\u00a0%`;
