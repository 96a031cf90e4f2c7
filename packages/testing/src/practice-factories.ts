import type { Database } from '@ballfirst/db/database';
import type { PracticeEntry, Prisma, Programme, Reply } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { createMembership, createSubmission, factoryNow } from './factories.ts';

type Given<T> = Partial<T> & { readonly academyId: string; readonly studentId: string };

/** An open programme of a student: the flat towel on a mat. */
export const createProgramme = async (
  db: Database,
  given: Given<Prisma.ProgrammeUncheckedCreateInput>,
): Promise<Programme> => {
  const { academyId, studentId } = given;
  const submissionId = given.submissionId ?? (await createSubmission(db, { academyId, studentId })).id;
  const data = {
    id: newId(),
    cause: 'thrown-early',
    drillId: 'flat-towel',
    drillVersion: 1,
    exaggeration: 'mild',
    place: 'mat',
    weeklyMinutes: 60,
    rung: 'rehearsal',
    status: 'open',
    createdAt: factoryNow,
    ...given,
    submissionId,
  };
  return withAcademy(db, academyId, (tx) => tx.programme.create({ data }));
};

/** A sent reply whose drill is the programme's, with a check-in after a week. */
export const createReply = async (
  db: Database,
  programme: Programme,
  given: Partial<Prisma.ReplyUncheckedCreateInput> = {},
): Promise<Reply> => {
  const { academyId, submissionId } = programme;
  const byMembership =
    given.byMembership ?? (await createMembership(db, { academyId, name: 'Coach Reed' })).id;
  const data = {
    id: newId(),
    status: 'sent',
    words: 'Words for the page only.',
    cause: programme.cause,
    setUpTicks: [],
    frames: [],
    plan: {
      drillId: programme.drillId,
      place: programme.place,
      exaggeration: programme.exaggeration,
      weeklyMinutes: programme.weeklyMinutes,
      firstCheckInDays: 7,
    },
    programmeId: programme.id,
    version: 1,
    updatedAt: factoryNow,
    sentAt: factoryNow,
    ...given,
    academyId,
    submissionId,
    byMembership,
  };
  return withAcademy(db, academyId, (tx) => tx.reply.create({ data }));
};

/** Ten balls on the first rung, seven clean. */
export const createEntry = async (
  db: Database,
  programme: Programme,
  given: Partial<Prisma.PracticeEntryUncheckedCreateInput> = {},
): Promise<PracticeEntry> => {
  const { academyId, studentId } = programme;
  const data = {
    id: newId(),
    rung: 'rehearsal',
    balls: 10,
    clean: 7,
    filmed: true,
    pain: 'none',
    localDate: '2026-03-10',
    at: factoryNow,
    verdict: 'stay',
    ...given,
    academyId,
    studentId,
    programmeId: programme.id,
  };
  return withAcademy(db, academyId, (tx) => tx.practiceEntry.create({ data }));
};
