import type { Tx } from '@ballfirst/db/with-academy';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Context, Resources } from '@ballfirst/services/context';
import { onceEffect } from '@ballfirst/services/effects/once-effect';
import { answerEvents } from './answer-events.ts';
import { contextOf, type Member, systemContext } from './at-time.ts';
import type { Standing } from './student-line.ts';

/** A stretch of the past that is being told: contexts of the verbs, all in one open transaction. */
export type Past = {
  readonly tx: Tx;
  of(member: Member, at: Date): Context;
  system(at: Date): Context;
  /** Does what the worker would have done by now about the events told so far. */
  answered(): Promise<void>;
};

/** So long a chapter may take on a machine that is busy otherwise. */
const timeoutMs = 60_000;

/** Tells a stretch of an academy's past in one transaction: all of it is there, or none. */
export const tellPast = <T>(
  resources: Resources,
  academyId: string,
  work: (past: Past) => Promise<T>,
): Promise<T> =>
  withAcademy(
    resources.db,
    academyId,
    async (tx) => {
      const past: Past = {
        tx,
        of: (member, at) => ({ ...contextOf(resources, member, at), tx }),
        system: (at) => ({ ...systemContext(resources, academyId, at), tx }),
        answered: async () => {
          while (await answerEvents(past, academyId));
        },
      };
      const told = await work(past);
      await past.answered();
      return told;
    },
    { timeoutMs },
  );

/**
 * Tells one chapter of a student's past, once: its mark is written in its own transaction, so that telling begins
 * anew after any cut and nothing is told twice. The student stands as on that day, and afterwards as now.
 * @returns false when it had been told before
 */
export const tellChapter = async (
  resources: Resources,
  chapter: { readonly student: Member; readonly mark: string; readonly standing: Standing },
  work: (past: Past) => Promise<void>,
): Promise<boolean> => {
  const { student, mark, standing } = chapter;
  const { academyId, studentId } = student;
  if (studentId === null) throw new TypeError(`${student.name} is no student.`);
  return tellPast(resources, academyId, async (past) => {
    const { tx } = past;
    const where = { academyId_id: { academyId, id: studentId } };
    const told = await onceEffect(
      past.system(resources.clock.now()),
      { eventId: studentId, name: `demo-${mark}` },
      async () => {
        const now = await tx.student.findUniqueOrThrow({ where, select: { standing: true } });
        if (now.standing === standing) await work(past);
        else {
          await tx.student.update({ where, data: { standing } });
          await work(past);
          await tx.student.update({ where, data: { standing: now.standing } });
        }
        return true;
      },
    );
    return told ?? false;
  });
};
