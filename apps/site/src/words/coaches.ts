import { hoursInWords } from './times.ts';
import { percentInWords } from './trials.ts';

export const coachesWords = {
  title: 'Coaches',
  lead: (days: number) => `What waits now, and how answers went over the last ${days} days.`,
  waiting: 'Waiting',
  late: 'Late',
  oldest: 'Oldest sent',
  promise: 'Promise',
  promiseHours: (hours: number) => `${hours} working hours`,
  filmAgain: 'Asked to film again',
  nothingWaits: 'Nothing waits.',
  table: 'Replies by coach',
  coach: 'Coach',
  claimed: 'Has now',
  answered: 'Answered',
  half: 'Half within',
  most: 'Nine in ten within',
  kept: 'Promise kept',
  all: 'Everybody',
  none: 'No reply yet',
  hours: (hours: number) => (hours < 0.05 ? 'at once' : hoursInWords(hours)),
  share: (it: { share: number; low: number; high: number }) =>
    `${percentInWords(it.share)} (${percentInWords(it.low)} to ${percentInWords(it.high)})`,
  note: 'In working hours of the academy. The bracket is the 95 % interval: with few replies it is wide.',
} as const;

export const extendWords = {
  open: 'More days',
  openFor: (name: string) => `More days for ${name}`,
  title: (name: string) => `How many more days for ${name}?`,
  days: 'Days',
  reason: 'Reason',
  reasonFirst: 'Was away',
  go: 'Extend the trial',
  busy: 'Extending …',
  back: 'Go back',
  asked: 'Asked to join',
} as const;
