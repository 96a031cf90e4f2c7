import { localDate } from '@ballfirst/calendar/local-date';
import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import { stepAfter } from './entries-of.ts';
import { holdPractice } from './hold-practice.ts';
import { keptStep } from './kept-step.ts';
import { lockProgramme } from './lock-programme.ts';
import { programmeNow } from './programme-now.ts';
import { findProgramme } from './programme-of.ts';
import { practisedOf } from './second-of.ts';

/**
 * Logs practice and says where the student stands. Pain that is new or worse holds the practice at once.
 * @throws ProblemError not-found, practice-not-possible, practice-held, wrong-state, bad-request
 */
export const logPractice = async ({ ctx, input }: Call<'logPractice'>): Promise<Reply<'logPractice'>> => {
  requireStudent(ctx);
  if (input.clean > input.balls) throw new ProblemError('practice-not-possible');
  return once(ctx, 'logPractice', async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const row = await lockProgramme(tx, ctx, input.id);
    if (row.status === 'held') throw new ProblemError('practice-held');
    if (row.status !== 'open') throw new ProblemError('wrong-state', 'This programme has ended.');
    const of = practisedOf(row, input.drillId);
    if (of === null) {
      throw new ProblemError('bad-request', undefined, [
        { path: 'drillId', message: 'This drill is not part of your programme.' },
      ]);
    }
    const { ladder } = of;
    if (!ladder.some((rung) => rung.id === input.rung)) {
      throw new ProblemError('bad-request', undefined, [
        { path: 'rung', message: 'This step is not part of your programme.' },
      ]);
    }
    const entry = {
      academyId,
      id: newId(),
      studentId: row.studentId,
      programmeId: row.id,
      rung: input.rung,
      balls: input.balls,
      clean: input.clean,
      filmed: input.filmed,
      pain: input.pain,
      second: of.second,
      localDate: localDate(now, row.student.membership.zone),
      at: now,
    };
    const step = stepAfter(of, [...of.entries, { ...entry, verdict: 'stay' }]);
    await tx.practiceEntry.create({ data: { ...entry, verdict: step.verdict } });
    await tx.programme.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: keptStep(of, step, { now, ageGroup: row.student.ageGroup }),
    });
    await tx.checkIn.updateMany({
      where: { academyId, programmeId: row.id, status: 'sent', asks: 'practice' },
      data: { status: 'done' },
    });
    if (input.pain !== 'none') await holdPractice(tx, ctx, row.studentId, 'pain-in-practice');
    await audit(tx, ctx, {
      action: 'log-practice',
      subject: `programme:${row.id}`,
      detail: { entryId: entry.id, verdict: step.verdict },
    });
    await emit(tx, ctx, 'practice.logged', { entryId: entry.id });
    const programme = await programmeNow(tx, await findProgramme(tx, ctx, row.id));
    const logged = programme.entries.find(({ id }) => id === entry.id);
    if (logged === undefined) throw new ProblemError('unexpected');
    return { entry: logged, programme };
  });
};
