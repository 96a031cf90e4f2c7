import { Mark, Observation } from '@ballfirst/contracts/http/submissions';
import { ProblemError } from '@ballfirst/contracts/problems';
import { SubmissionStatus, Verdict } from '@ballfirst/contracts/words';
import { readLearnedRow } from '@ballfirst/db/reads/learned';
import { type OpenSubmission, readOpenSubmission } from '@ballfirst/db/reads/open-submission';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { baseRatesOf } from '../learning/base-rates-of.ts';
import { isHeldBack } from '../learning/is-held-back.ts';
import type { Call, Reply } from '../operation-types.ts';
import { diagnosisOf } from './diagnosis-of.ts';
import { faultOf } from './fault-of.ts';
import { openedSubmission } from './opened-submission.ts';
import { settingOf } from './picture-of.ts';
import { evidenceFor } from './reading-of.ts';
import { replyDraftOf } from './reply-draft-of.ts';
import { studentSetOf } from './student-set-of.ts';
import { timedPicture, trailOf } from './trail-of.ts';

const markingOf = (clip: OpenSubmission['clips'][number]) => ({
  clipId: clip.id,
  version: clip.marksVersion,
  marks: clip.marks.map((mark) => Mark.parse(mark)),
  observations: clip.observations.map((one) => Observation.parse(one)),
  trail: trailOf(clip),
});

const lastEntry = (entries: NonNullable<OpenSubmission['programme']>['entries']) => {
  const [last] = entries;
  if (last === undefined) return null;
  const { localDate, drillId, rung, balls, clean, verdict } = last;
  return { localDate, drillId, rung, balls, clean, verdict: Verdict.parse(verdict) };
};

/** Everything the review screen needs: the swing in one statement, beside it what the academy has learned. @throws ProblemError not-found */
export const openReview = async ({ ctx, input }: Call<'openReview'>): Promise<Reply<'openReview'>> => {
  requireStaff(ctx);
  const { db, clock } = ctx.resources;
  const at = { academyId: ctx.academyId, submissionId: input.id };
  const [opened, learned] = await Promise.all([
    readOpenSubmission(db, at),
    readLearnedRow(db, { ...at, now: clock.now() }),
  ]);
  if (opened === null) throw new ProblemError('not-found');
  const { submission, student, clips, diagnosis, reply, programme } = opened;
  const fault = faultOf(diagnosis?.fault ?? null, { ...submission, hand: student.hand });
  const heldBack = isHeldBack(
    { ...submission, clips, orderShownAt: learned.orderShownAt },
    { since: learned.since, chosen: diagnosis !== null },
  );
  const reading = { heldBack, baseRates: baseRatesOf(learned) };
  const swing = { hand: student.hand, club: submission.club };
  // Few swings have the clubhead over frames: only those ask for more than the one statement.
  const traced = clips.some((clip) => trailOf(clip).length > 0);
  const set = traced
    ? await inTransaction(ctx, (tx) => studentSetOf(tx, ctx, { ...submission, hand: student.hand }))
    : null;
  return {
    submission: openedSubmission(opened, clock.now()),
    marking: clips.map(markingOf),
    evidence: await Promise.all(
      clips
        .filter(({ status }) => status === 'ready')
        .map(async (clip) => {
          const marking = markingOf(clip);
          const picture = await timedPicture(ctx, clip, marking);
          const setting = settingOf(clip, swing);
          return { clipId: clip.id, ...evidenceFor(fault, { ...marking, picture, setting, set }, reading) };
        }),
    ),
    ...{ ...reading, set },
    named: learned.named?.causeId ?? null,
    diagnosis:
      diagnosis === null
        ? null
        : diagnosisOf({
            ...{ ...diagnosis, by: diagnosis.byName },
            blind: learned.named?.diagnosisId === diagnosis.id,
          }),
    reply: reply === null ? null : replyDraftOf(reply),
    openProgramme:
      programme === null
        ? null
        : {
            id: programme.id,
            cause: programme.cause,
            drillId: programme.drillId,
            rung: programme.rung,
            status: programme.status,
            entries: programme.entries.length,
            last: lastEntry(programme.entries),
          },
    about: {
      goal: student.goal,
      usualMiss: student.usualMiss,
      units: student.units === 'imperial' ? 'imperial' : 'metric',
    },
    earlier: opened.earlier.map((one) => ({ ...one, status: SubmissionStatus.parse(one.status) })),
  };
};
