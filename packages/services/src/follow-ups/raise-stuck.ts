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
  for (const step of await stepsNotPassed(tx, ctx.academyId, programme.programmeId)) {
    about.push({ subjectId: programme.programmeId, name: `raise-stuck.${step}` });
  }
  for (const { subjectId, name } of about) {
    await onceEffect({ ...ctx, tx }, { eventId: subjectId, name }, () =>
      raiseConcern(tx, ctx, {
        ...{ kind: 'stuck', subjectId, programmeId: programme.programmeId, pain: 'none' },
        ...{ student, academy: student.academy },
      }),
    );
  }
};

const stepNotPassed = async (
  tx: Tx,
  where: { readonly academyId: string; readonly programmeId: string; readonly second: boolean },
): Promise<string[]> => {
  const last = await tx.practiceEntry.findMany({
    where,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: entriesWithoutPassing,
  });
  const [newest] = last;
  if (newest === undefined || last.length < entriesWithoutPassing) return [];
  const same = last.every(({ rung, verdict }) => rung === newest.rung && verdict !== 'passed');
  return same ? [where.second ? `second.${newest.rung}` : newest.rung] : [];
};

/**
 * The steps on which the last entries all stayed: of either drill, each by its own entries, because those of the other say
 * nothing of its step. One of the second drill begins with `second.`
 */
export const stepsNotPassed = async (
  tx: Tx,
  academyId: string,
  programmeId: string,
): Promise<readonly string[]> => [
  ...(await stepNotPassed(tx, { academyId, programmeId, second: false })),
  ...(await stepNotPassed(tx, { academyId, programmeId, second: true })),
];
