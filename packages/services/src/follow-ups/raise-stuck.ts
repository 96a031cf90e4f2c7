import type { Tx } from '@ballfirst/db/with-academy';
import type { NudgeFacts } from '@ballfirst/progress/choose-nudge';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import { raiseConcern } from '../inbox/raise-concern.ts';
import type { StudentRow } from '../rows.ts';

/** Days after which a check-in that was asked for and reminded of is the coach's. Common practice, no source. */
const unansweredDays = 7;
/** Entries in a row on one step without passing it, after which a coach looks. Common practice, no source. */
const entriesWithoutPassing = 5;

/**
 * Puts a student who is stuck before the coaches, once for each check-in that stays unanswered and once for each step that
 * is not passed. A swing that waits for an answer says it already.
 */
export const raiseStuck = async (
  tx: Tx,
  ctx: Context,
  student: StudentRow,
  facts: NudgeFacts,
): Promise<void> => {
  const { checkIn, programme } = facts;
  // Whoever is taught no longer is no coach's to unstick.
  if (student.standing !== 'trial' && student.standing !== 'paid') return;
  if (facts.waitsForCoach || programme === null) return;
  const about: { subjectId: string; name: string }[] = [];
  if (checkIn !== null && checkIn.days >= unansweredDays) {
    about.push({ subjectId: checkIn.checkInId, name: 'raise-stuck' });
  }
  const rung = await rungNotPassed(tx, ctx.academyId, programme.programmeId);
  if (rung !== null) about.push({ subjectId: programme.programmeId, name: `raise-stuck.${rung}` });
  for (const { subjectId, name } of about) {
    await onceEffect({ ...ctx, tx }, { eventId: subjectId, name }, () =>
      raiseConcern(tx, ctx, {
        ...{ kind: 'stuck', subjectId, programmeId: programme.programmeId, pain: 'none' },
        ...{ student, academy: student.academy },
      }),
    );
  }
};

/** The step on which the last entries all stayed, or null. */
export const rungNotPassed = async (
  tx: Tx,
  academyId: string,
  programmeId: string,
): Promise<string | null> => {
  const last = await tx.practiceEntry.findMany({
    where: { academyId, programmeId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: entriesWithoutPassing,
  });
  const [newest] = last;
  if (newest === undefined || last.length < entriesWithoutPassing) return null;
  const same = last.every(({ rung, verdict }) => rung === newest.rung && verdict !== 'passed');
  return same ? newest.rung : null;
};
