import type { Context } from '../context.ts';
import type { Composed } from './letters/compose.ts';
import { guardianCopy } from './letters/guardian-copy.ts';
import { sendLetter } from './send-letter.ts';
import type { StudentToWriteTo } from './student-to-write-to.ts';

/** How many letters left: none when all had left before, two with a guardian's copy. */
export type Told = { readonly sent: number };

export const toldNobody: Told = { sent: 0 };

/** Sends a letter to a student, and its copy to the guardian of a junior: each once for the event, each on its own. */
export const sendToStudent = async (
  ctx: Context,
  it: {
    readonly eventId: string;
    readonly kind: string;
    readonly reader: StudentToWriteTo;
    readonly letter: Composed;
    /** Where a mail program ends reminders by itself. */
    readonly stopUrl?: string;
  },
): Promise<Told> => {
  const { eventId, kind, letter } = it;
  const { student, guardian } = it.reader;
  const { id: membershipId, name, email } = student.membership;
  const of = {
    ...{ eventId, kind, academyName: student.academy.name },
    ...(it.stopUrl === undefined ? {} : { stopUrl: it.stopUrl }),
  };
  // The guardian first: where only one of the two can be reached, it is not the minor alone.
  const copied =
    guardian === null
      ? toldNobody
      : await counted(ctx, {
          ...of,
          copy: 'guardian',
          to: { membershipId, ...guardian },
          letter: guardianCopy(letter, { guardianName: guardian.name, studentName: name }),
        });
  const told = await counted(ctx, { ...of, to: { membershipId, name, address: email }, letter });
  return { sent: copied.sent + told.sent };
};

const counted = async (ctx: Context, input: Parameters<typeof sendLetter>[0]['input']): Promise<Told> => {
  const { sent } = await sendLetter({ ctx, input });
  return { sent: sent ? 1 : 0 };
};
