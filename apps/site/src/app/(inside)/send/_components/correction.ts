import type { Body } from '@ballfirst/contracts/client';
import { outcomeOrder } from '../../../../words/tally.ts';
import { type BallsDraft, tallyOf, type View } from './draft.ts';
import type { Submission } from './use-submission.ts';

type Correction = Body<'correctSubmission'>;
type Clip = Submission['clips'][number];

/** What was said of a sent swing, as it stands in the form that puts it right. */
export type CorrectDraft = BallsDraft & {
  hand: Submission['student']['hand'];
  clips: readonly { id: string; fileName: string; view: View; swingLength: Clip['swingLength'] }[];
};

export const correctDraftOf = (submission: Submission): CorrectDraft => {
  const { tally, startLine, curve, club, lie, typical, student, clips } = submission;
  return {
    taps: outcomeOrder.flatMap((one) => Array.from({ length: tally[one] }, () => one)),
    balls: tally.balls,
    counted: tally.counted,
    ...{ startLine, curve, club, lie, typical },
    hand: student.hand,
    clips: clips.map(({ id, fileName, view, swingLength }) => ({ id, fileName, view, swingLength })),
  };
};

/** Only what differs from what was sent; null where nothing does. */
export const correctionOf = (submission: Submission, draft: CorrectDraft): Correction | null => {
  const tally = tallyOf(draft);
  const { tally: sent } = submission;
  const tallyDiffers =
    tally.balls !== sent.balls ||
    tally.counted !== sent.counted ||
    outcomeOrder.some((one) => tally[one] !== sent[one]);
  const clips = draft.clips.filter((clip) =>
    submission.clips.some(
      (it) => it.id === clip.id && (it.view !== clip.view || it.swingLength !== clip.swingLength),
    ),
  );
  const correction: Correction = {
    ...(draft.club !== submission.club && { club: draft.club }),
    ...(draft.lie !== submission.lie && { lie: draft.lie }),
    ...(draft.hand !== submission.student.hand && { hand: draft.hand }),
    ...(draft.startLine !== submission.startLine && { startLine: draft.startLine }),
    ...(draft.curve !== submission.curve && { curve: draft.curve }),
    ...(draft.typical !== submission.typical && { typical: draft.typical }),
    ...(tallyDiffers && { tally }),
    ...(clips.length > 0 && {
      clips: clips.map(({ id, view, swingLength }) => ({ id, view, swingLength })),
    }),
  };
  return Object.keys(correction).length === 0 ? null : correction;
};
