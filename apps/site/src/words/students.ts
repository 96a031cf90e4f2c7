import type { Reply } from '@ballfirst/contracts/client';
import { submissionStatusNames } from './names.ts';

type Student = Reply<'listStudents'>['items'][number];

export const studentsWords = {
  title: 'Students',
  lead: 'By name. A flag says what needs a look.',
  filters: 'Show',
  everybody: 'Everybody',
  columns: {
    name: 'Student',
    standing: 'Standing',
    lastSwing: 'Last swing',
    lastReply: 'Last reply',
    practice: 'Practice of planned',
    cause: 'Cause and step',
    verdict: 'Since the drill',
    flags: 'Flags',
  },
  flags: {
    waiting: 'A swing waits',
    pain: 'Pain reported',
    consent: 'Consent missing',
    unread: 'Reply unread',
  } satisfies Record<Student['flags'][number], string>,
  trialDay: (day: number) => `day ${day}`,
  never: 'None yet',
  practice: (clean: number, balls: number, days: number) =>
    `${clean} of ${balls} clean on ${days} ${days === 1 ? 'day' : 'days'}`,
  thisWeek: (days: number, planned: number) => `${days} of ${planned} days this week`,
  noPractice: 'None logged',
  noVerdict: 'No later swing',
  /** Where there is nothing to say. */
  nothing: '–',
  noFlags: 'None',
  noCause: 'No drill running',
  emptyTitle: 'Nobody here',
  empty: 'No student has joined yet. Send people the address of your sign-up page.',
  emptyFiltered: 'No student stands like this.',
  showAll: 'Show everybody',
  further: 'Further down the list',
  top: 'Back to the top',
} as const;

export const studentWords = {
  back: 'All students',
  plays: 'Plays',
  joined: 'Joined',
  trialEnds: 'Trial ends',
  replyHours: 'Last answer took',
  workingHours: (hours: string) => `${hours} of working time`,
  facts: 'At a glance',
  swings: 'Swings',
  noSwings: 'No swing yet.',
  statuses: { ...submissionStatusNames, waiting: 'Waits for an answer' },
  open: (when: string) => `Open the swing of ${when}`,
  weeks: 'Weeks',
  noWeeks: 'Nothing counted yet.',
  weekColumns: {
    week: 'Week from',
    practice: 'Practice',
    days: 'Days',
    swings: 'Swings sent',
    fat: 'Fat in the tallies',
  },
  of: (count: number, of: number) => (of === 0 ? '–' : `${count} of ${of}`),
  standings: 'History of standing',
  joinedAs: (to: string) => `Began: ${to.toLowerCase()}`,
  moved: (from: string, to: string) => `${from} to ${to.toLowerCase()}`,
  by: (name: string) => `by ${name}`,
  change: 'Change the standing',
  changeTo: 'New standing',
  reason: 'Reason',
  reasonHint: 'Kept in the history. You may leave it empty.',
  changeGo: 'Change it',
  changing: 'Changing …',
  changed: (name: string, standing: string) => `${name} is now: ${standing.toLowerCase()}.`,
} as const;
