import type { Reply } from '@ballfirst/contracts/client';
import { faultById } from '@ballfirst/library/faults';
import type { FaultId } from '@ballfirst/library/types';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { type PhraseHelp, phrasesHere } from './phrase-help.ts';
import { purposeFor } from './purpose-for.ts';

type Submission = Reply<'readSubmission'>;
type Drill = Reply<'listDrills'>['items'][number];
type Given = {
  submission: Submission;
  fault: FaultId;
  drill: Drill | null;
  cause: string;
  phrases: PhraseHelp;
};

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

/** How often the miss came, where the tally counted it. */
const often = ({ tally }: Submission, fault: FaultId): string => {
  const counts: Readonly<Record<string, unknown>> = tally;
  const count = counts[fault];
  return typeof count === 'number' && count > 0 ? `in ${count} of your ${tally.balls} balls ` : '';
};

/** The phrase that speaks of the cause and its measurement, where one fits; the coach's own before the library's. */
const ofCause = (cause: string, drillName: string | null, phrases: PhraseHelp): string | null =>
  phrasesHere(phrases, { cause, drillName }).find(({ phrase }) => phrase.causes.includes(cause))?.text ??
  null;

/**
 * The words a reply begins with, for this player's hand: what happened, what was seen of its cause, one thing only, the
 * drill and how to work. The cause itself stands above them as the sentence of the reply.
 */
export const firstWords = ({ submission, fault, drill, cause, phrases }: Given): string => {
  const { name, hand } = submission.student;
  const before = often(submission, fault);
  const happened = faultById(fault).happened;
  const seen = ofCause(cause, drill?.name ?? null, phrases);
  const parts = [
    `${name.split(' ')[0] ?? name},`,
    `${before}${lower(happened)}`,
    seen ?? 'One thing brings that about.',
    'Work on that alone; everything else can wait until it holds.',
    ...(drill === null
      ? []
      : [
          `Your drill is “${drill.name}”. It ${lower(purposeFor(drill, hand))}`,
          'Film one swing of three, look, put it right, swing again.',
        ]),
  ];
  return wordsForHand(parts.join(' '), hand);
};
