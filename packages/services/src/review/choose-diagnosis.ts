import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import { joinClips } from '@ballfirst/diagnosis/join-clips';
import { type RankedCause, rank } from '@ballfirst/diagnosis/rank';
import { methodVersion } from '@ballfirst/diagnosis/weights';
import { causes } from '@ballfirst/library/causes';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { requireClaim } from '../inbox/require-claim.ts';
import type { BaseRates } from '../learning/base-rates-of.ts';
import { countChoice } from '../learning/count-choice.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { diagnosisOf } from './diagnosis-of.ts';
import { latestDiagnosis } from './latest-diagnosis.ts';
import { markedClips } from './marked-clips.ts';
import { readingOf } from './reading-of.ts';

/** The academy's own rates among those that the ranking has used; the others are the library's. */
const ratesUsed = (ranking: readonly RankedCause[], baseRates: BaseRates): BaseRates =>
  Object.fromEntries(
    ranking.flatMap(({ causeId }) => {
      const rate = baseRates[causeId];
      return rate === undefined ? [] : [[causeId, rate]];
    }),
  );

/**
 * Chooses the one cause that comes first. What it was computed from, what came out and by which method is kept, so that
 * it can be recomputed; a cause other than the first of the ranking is kept as an overruling, one named while the ranking
 * was held back as blind. From these an academy learns its own base rates.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, bad-request
 */
export const chooseDiagnosis = async ({
  ctx,
  input,
}: Call<'chooseDiagnosis'>): Promise<Reply<'chooseDiagnosis'>> => {
  const { membershipId, name } = requireStaff(ctx);
  const { fault, cause: chosenCause } = input;
  if (!causes.some(({ id }) => id === chosenCause)) {
    throw new ProblemError('bad-request', undefined, [
      { path: 'cause', message: 'This cause is not in the library.' },
    ]);
  }
  return once(ctx, 'chooseDiagnosis', async (tx) => {
    const row = await requireClaim(tx, ctx, input.id);
    const clips = await markedClips(tx, ctx, row);
    const before = await latestDiagnosis(tx, ctx, row.id);
    const { learns, heldBack: blind, baseRates } = await readingOf(tx, ctx, row, before !== null);
    const ranking = rank({
      fault,
      readings: joinClips(clips.map((clip) => readingsOf(clip).readings)),
      observations: clips.flatMap((clip) => clip.observations),
      causes,
      baseRates,
    });
    const overruled = ranking[0]?.causeId !== chosenCause;
    const views = [...new Set(clips.map(({ setting }) => setting.view))].sort();
    const counted = await countChoice(tx, ctx, { submissionId: row.id, blind, overruled }, learns);
    const made = await tx.diagnosis.create({
      data: {
        academyId: ctx.academyId,
        id: newId(),
        submissionId: row.id,
        fault,
        chosenCause,
        setUpTicks: [...new Set(input.setUpTicks)],
        inputs: {
          tally: row.tally ?? {},
          baseRates: ratesUsed(ranking, baseRates),
          clips: clips.map(({ clipId, marks, observations, setting, picture }) => ({
            clipId,
            setting,
            picture: {
              widthPx: picture.widthPx,
              heightPx: picture.heightPx,
              frames: picture.frameTimesS.length,
            },
            marks: marks.map((mark) => ({ ...mark })),
            observations: observations.map((one) => ({ ...one })),
          })),
        },
        ranking: ranking.map(({ causeId, probability, share, score }) => ({
          causeId,
          probability,
          share,
          score,
        })),
        methodVersion,
        ...{ overruled, blind, views, counted },
        byMembership: membershipId,
        at: ctx.resources.clock.now(),
      },
    });
    await audit(tx, ctx, {
      action: 'choose-diagnosis',
      subject: `submission:${row.id}`,
      detail: { fault, cause: chosenCause, overruled, blind },
    });
    return diagnosisOf({ ...made, by: name });
  });
};
