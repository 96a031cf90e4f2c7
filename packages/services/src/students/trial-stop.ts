import type { Reply } from '../operation-types.ts';

export type Stop = Reply<'readTrials'>['items'][number]['stop'];

/** How a trial is going. Instants; null: not yet. */
export type TrialFacts = {
  readonly now: Date;
  readonly endsAt: Date;
  readonly firstSwingAt: Date | null;
  /** The newest swing's video cannot be used: it is the student's turn to film again. */
  readonly filmAgain: boolean;
  /** A swing waits for an answer. */
  readonly waitsForUs: boolean;
  readonly lastReplyAt: Date | null;
  readonly replyUnread: boolean;
  readonly practisedSinceReply: boolean;
  /** Practice is on hold because of pain. */
  readonly held: boolean;
  /** A junior whose guardian's consent does not stand: no video is taken. */
  readonly consentMissing: boolean;
};

/** A trial is about to end in its last three days: common practice, no source. */
const lastDaysMs = 3 * 86_400_000;

/** A drill that was given so lately may still be begun: as long as the reminder waits. Common practice, no source. */
const freshMs = 3 * 86_400_000;
const isFresh = ({ now }: Pick<TrialFacts, 'now'>, replyAt: Date): boolean =>
  now.getTime() - replyAt.getTime() < freshMs;

/** Where a trial stands still: the first of the steps to a paying student that has not been made. */
export const trialStop = (facts: TrialFacts): Stop => {
  if (facts.firstSwingAt === null) return 'no-first-swing';
  if (facts.waitsForUs) return 'waits-for-us';
  if (facts.replyUnread) return 'reply-unread';
  // A first swing that cannot be seen is none yet.
  if (facts.lastReplyAt === null) return 'no-first-swing';
  if (facts.held) return 'held';
  if (!facts.practisedSinceReply && !isFresh(facts, facts.lastReplyAt)) return 'no-practice';
  return facts.endsAt.getTime() - facts.now.getTime() <= lastDaysMs ? 'ending' : 'moving';
};

const actions: Readonly<Record<Stop, string>> = {
  'no-first-swing': 'Write and offer help with filming: nothing happens before the first swing.',
  'waits-for-us': 'Answer the swing that waits: a reply within a day keeps a trial alive.',
  'reply-unread': 'Tell the student that the reply is there.',
  held: 'Practice is on hold because of pain. Ask how the student is; ask for no practice and no swing before a clinician has been seen.',
  'no-practice': 'Ask what keeps the student from practising; a shorter drill may help.',
  ending: 'Show then and now, say the price, and ask whether to go on.',
  moving: 'Nothing: practice is logged.',
};
const freshAction = 'Nothing yet: the drill was given less than three days ago.';
const filmAction = 'The video cannot be used. Write and help with filming it again.';
const consentAction =
  'The guardian has to consent before anything can be sent. Write to the guardian, or help the student to ask again.';

/** What the manager can do about it, in words. Nobody is pressed to practise with a pain. */
export const nextAction = (
  stop: Stop,
  facts: Pick<TrialFacts, 'filmAgain' | 'consentMissing' | 'practisedSinceReply'>,
): string => {
  if (stop === 'held') return actions.held;
  const mayFilm = stop !== 'waits-for-us' && stop !== 'reply-unread';
  if (facts.consentMissing && mayFilm && (facts.filmAgain || stop === 'no-first-swing')) return consentAction;
  if (facts.filmAgain && mayFilm) return filmAction;
  return stop === 'moving' && !facts.practisedSinceReply ? freshAction : actions[stop];
};
