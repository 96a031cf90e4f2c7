import type { Reply } from '@ballfirst/contracts/client';
import { faultById } from '@ballfirst/library/faults';
import type { FaultId } from '@ballfirst/library/types';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { purposeFor } from './purpose-for.ts';

type Submission = Reply<'readSubmission'>;
type Drill = Reply<'listDrills'>['items'][number];
type Given = { submission: Submission; fault: FaultId; drill: Drill | null };

const lower = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

/** How often the miss came, where the tally counted it. */
const often = ({ tally }: Submission, fault: FaultId): string => {
  const counts: Readonly<Record<string, unknown>> = tally;
  const count = counts[fault];
  return typeof count === 'number' && count > 0 ? `in ${count} of your ${tally.balls} balls ` : '';
};

/**
 * The words a reply begins with, for this player's hand: what happened, one thing only, the drill and how to work. The
 * cause itself stands above them as the sentence of the reply.
 */
export const firstWords = ({ submission, fault, drill }: Given): string => {
  const { name, hand } = submission.student;
  const before = often(submission, fault);
  const happened = faultById(fault).happened;
  const parts = [
    `${name.split(' ')[0] ?? name},`,
    `${before}${lower(happened)}`,
    'One thing brings that about. Work on it alone; everything else can wait until it holds.',
    ...(drill === null
      ? []
      : [
          `Your drill is “${drill.name}”. It ${lower(purposeFor(drill, hand))}`,
          'Film one swing of three, look, put it right, swing again.',
        ]),
  ];
  return wordsForHand(parts.join(' '), hand);
};
