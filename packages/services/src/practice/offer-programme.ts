import { ProblemError } from '@ballfirst/contracts/problems';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import { joinClips } from '@ballfirst/diagnosis/join-clips';
import { rank } from '@ballfirst/diagnosis/rank';
import { causes } from '@ballfirst/library/causes';
import { drillById, drills } from '@ballfirst/library/drills';
import { likelyCauses } from '@ballfirst/practice/likely-causes';
import { chooseProgramme, type Programme } from '@ballfirst/practice/programme';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { faultOf } from '../review/fault-of.ts';
import { latestDiagnosis } from '../review/latest-diagnosis.ts';
import { markedClips } from '../review/marked-clips.ts';
import { readingOf } from '../review/reading-of.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { meansFor } from './means-for.ts';
import { meansWords } from './means-words.ts';
import { sessionOf } from './session-of.ts';

type Offer = Reply<'offerProgramme'>;

/** The first look after a new drill. Common practice, no source. */
const firstCheckInDays = 4;
const leastWeekly = 10;
const forCoach = (sentence: string): string =>
  sentence.replaceAll('{lead}', 'lead').replaceAll('{trail}', 'trail');

/** What the choice comes to as a plan of a reply. */
const planned = (chosen: Programme): NonNullable<Offer['plan']> => ({
  drillId: chosen.drillId,
  place: chosen.place,
  exaggeration: chosen.exaggeration,
  weeklyMinutes: Math.max(leastWeekly, chosen.weeklyMinutes),
  firstCheckInDays,
  daysPerWeek: chosen.daysPerWeek,
  minutesPerDay: chosen.minutes,
  second: chosen.second === null ? null : { drillId: chosen.second.drillId, minutes: chosen.second.minutes },
});

/**
 * The programme that promises most for a cause of this swing under what its student has, and what was left out and why.
 * @throws ProblemError not-found, bad-request when no cause is asked for or chosen, or it is not in the library
 */
export const offerProgramme = async ({ ctx, input }: Call<'offerProgramme'>): Promise<Offer> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const row = await findSubmission(tx, ctx, input.id);
    const diagnosis = await latestDiagnosis(tx, ctx, row.id);
    const cause = input.cause ?? diagnosis?.chosenCause;
    if (cause === undefined || !causes.some(({ id }) => id === cause)) {
      throw new ProblemError('bad-request', undefined, [
        { path: 'cause', message: 'Choose a cause of the library first.' },
      ]);
    }
    const fault = faultOf(diagnosis?.fault ?? null, { ...row, hand: row.student.hand });
    const clips = await markedClips(tx, ctx, row);
    const { heldBack, baseRates } = await readingOf(tx, ctx, row, diagnosis !== null);
    const ranked = rank({
      fault,
      readings: joinClips(clips.map((clip) => readingsOf(clip).readings)),
      observations: clips.flatMap((clip) => clip.observations),
      ...{ causes, baseRates },
    });
    // What is left out would tell which other causes are likely.
    const ranking = heldBack ? [] : ranked;
    const means = meansFor(row.student, row.lie);
    const chosen = chooseProgramme({
      rankedCauses: likelyCauses({ chosenCauseId: cause, fault, ranking, causes }),
      means,
      library: { causes, drills },
    });
    const shown = {
      cause,
      means: meansWords(means, row.student),
      leftOut: chosen.leftOut.map((one) => ({ ...one })),
    };
    if (chosen.drillId === null) {
      return {
        ...shown,
        ...{ plan: null, drillName: null, secondName: null, ballsAtMost: null, session: null, cautions: [] },
      };
    }
    const { ballsAtMost, daysPerWeek, minutes } = chosen;
    const drill = drillById(chosen.drillId);
    const [rung] = chosen.ladder;
    const atMost = rung?.ball === true ? ballsAtMost : drill.ballsAtMost;
    return {
      ...shown,
      plan: planned(chosen),
      drillName: drill.name,
      secondName: chosen.second === null ? null : drillById(chosen.second.drillId).name,
      ballsAtMost,
      session: sessionOf({ rung: rung?.id ?? 'rehearsal', daysPerWeek, minutes, atMost }),
      cautions: chosen.cautions.map(forCoach),
    };
  });
};
