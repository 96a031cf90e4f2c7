import type { Reply } from '@ballfirst/contracts/client';

type Kind = Reply<'readReminderRules'>['items'][number]['kind'];

const kinds: Record<Kind, readonly [name: string, when: string]> = {
  'trial-ending': [
    'The trial ends soon',
    'In the last three days, to whoever has sent a swing: then and now, the price, and that nothing is charged unasked.',
  ],
  'check-in-reminder': ['A check-in is open', 'Three days after a fresh swing was asked for and none came.'],
  'film-again': ['A better clip is needed', 'Two days after a coach asked to film again.'],
  'reply-unread': ['A reply is unread', 'Two days after it was sent.'],
  'first-swing': ['No swing yet', 'Three days after joining, and once more after a week.'],
  practice: ['No practice logged', 'Three days after a drill was given, then a week after the last entry.'],
};

export const settingsWords = {
  title: 'Settings',
  parts: 'Parts of the settings',
  staff: 'Staff',
  reminders: {
    title: 'Reminders',
    lead: 'Sent at nine in the morning where the student is, one message a day at most, about one thing once. A student can end them all with one click. Nobody whose practice is on hold is asked to practise.',
    kinds,
  },
} as const;

export const stopWords = {
  title: 'Reminders',
  lead: 'End all reminders? Replies from your coach and check-ins still come.',
  go: 'End reminders',
  busy: 'Ending …',
  done: 'No more reminders. You can switch them on again on your page.',
  noLink: 'This page opens from the link at the end of a reminder.',
} as const;

export const ownReminderWords = {
  title: 'Reminders',
  label: 'Remind me by mail when something stands still',
  hint: 'One message a day at most. Replies and check-ins come in any case.',
  quiet: 'Quiet hours: reminders and check-ins wait until they are over',
  from: 'Quiet from',
  to: 'until',
  save: 'Keep the quiet hours',
  saved: 'Kept.',
} as const;
