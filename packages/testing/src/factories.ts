import type { Database } from '@ballfirst/db/database';
import type {
  Academy,
  Clip,
  Concern,
  Membership,
  Prisma,
  Student,
  Submission,
} from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';

/** The instant factories stand at unless told otherwise: a Tuesday, 09:00 UTC. */
export const factoryNow = new Date('2026-03-10T09:00:00.000Z');

const hoursLater = (hours: number): Date => new Date(factoryNow.getTime() + hours * 3_600_000);

/** An academy that works Monday to Friday, nine to five, in UTC. */
export const createAcademy = (
  db: Database,
  given: Partial<Prisma.AcademyUncheckedCreateInput> = {},
): Promise<Academy> => {
  const id = given.id ?? newId();
  const day = [['09:00', '17:00']];
  const data = {
    slug: `academy-${id}`,
    name: 'An academy',
    zone: 'UTC',
    workingHours: { week: { mon: day, tue: day, wed: day, thu: day, fri: day }, holidays: [] },
    promiseHours: 24,
    trialDays: 14,
    trialStarts: 'joining',
    priceWords: '40 a month',
    consentAge: 16,
    safeguardContact: 'the manager',
    createdAt: factoryNow,
    ...given,
    id,
  };
  return withAcademy(db, id, (tx) => tx.academy.create({ data }));
};

/** A coach unless another role is given; in an academy of its own unless one is given. */
export const createMembership = async (
  db: Database,
  given: Partial<Prisma.MembershipUncheckedCreateInput> = {},
): Promise<Membership> => {
  const academyId = given.academyId ?? (await createAcademy(db)).id;
  const id = given.id ?? newId();
  const data = {
    personId: newId(),
    role: 'coach',
    name: 'A coach',
    email: `${id}@example.test`,
    zone: 'UTC',
    createdAt: factoryNow,
    ...given,
    academyId,
    id,
  };
  return withAcademy(db, academyId, (tx) => tx.membership.create({ data }));
};

/** An adult on the first day of a trial, with a membership of their own. */
export const createStudent = async (
  db: Database,
  given: Partial<Prisma.StudentUncheckedCreateInput> = {},
): Promise<Student> => {
  const academyId = given.academyId ?? (await createAcademy(db)).id;
  const membershipId =
    given.membershipId ?? (await createMembership(db, { academyId, role: 'student', name: 'A student' })).id;
  const data = {
    id: newId(),
    hand: 'right',
    ageGroup: 'adult',
    units: 'metric',
    standing: 'trial',
    trialStartedAt: factoryNow,
    trialEndsAt: hoursLater(14 * 24),
    createdAt: factoryNow,
    ...given,
    academyId,
    membershipId,
  };
  return withAcademy(db, academyId, (tx) => tx.student.create({ data }));
};

export const tenBalls = {
  ...{ balls: 10, solid: 4, fat: 6, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 },
  counted: true,
};

/** A waiting submission with six fat of ten, without clips. */
export const createSubmission = async (
  db: Database,
  given: Partial<Prisma.SubmissionUncheckedCreateInput> = {},
): Promise<Submission> => {
  const academyId = given.academyId ?? (await createAcademy(db)).id;
  const studentId = given.studentId ?? (await createStudent(db, { academyId })).id;
  const data = {
    id: newId(),
    status: 'waiting',
    club: '8-iron',
    lie: 'mat',
    tally: tenBalls,
    leadFault: 'fat',
    startLine: 'straight',
    curve: 'none',
    typical: 'usual',
    note: 'The ground comes first.',
    pain: 'none',
    painNote: '',
    sentAt: factoryNow,
    answerBy: hoursLater(24),
    priorityKey: hoursLater(24),
    headStartHours: 0,
    reasons: [],
    version: 1,
    ...given,
    academyId,
    studentId,
  };
  return withAcademy(db, academyId, (tx) => tx.submission.create({ data }));
};

/** A prepared face-on clip of a submission, two seconds at 120 frames a second. */
export const createClip = async (
  db: Database,
  given: Partial<Prisma.ClipUncheckedCreateInput> = {},
): Promise<Clip> => {
  const submission =
    given.academyId && given.studentId
      ? { academyId: given.academyId, studentId: given.studentId, id: given.submissionId ?? null }
      : await createSubmission(db, given.academyId ? { academyId: given.academyId } : {});
  const data = {
    id: newId(),
    fileName: 'swing.mp4',
    view: 'face-on',
    swingLength: 'full',
    status: 'ready',
    lengthBytes: 1_000_000n,
    percent: 100,
    widthPx: 1080,
    heightPx: 1920,
    frames: 240,
    fps: 120,
    durationMs: 2_000,
    fence: 1,
    marksVersion: 0,
    createdAt: factoryNow,
    expiresAt: hoursLater(24),
    ...given,
    academyId: submission.academyId,
    studentId: submission.studentId,
    submissionId: given.submissionId === undefined ? submission.id : given.submissionId,
  };
  return withAcademy(db, submission.academyId, (tx) => tx.clip.create({ data }));
};

/** A new pain told while practising, waiting. */
export const createConcern = async (
  db: Database,
  given: Partial<Prisma.ConcernUncheckedCreateInput> = {},
): Promise<Concern> => {
  const academyId = given.academyId ?? (await createAcademy(db)).id;
  const studentId = given.studentId ?? (await createStudent(db, { academyId })).id;
  const data = {
    id: newId(),
    kind: 'pain',
    subjectId: newId(),
    pain: 'new',
    words: '',
    status: 'waiting',
    raisedAt: factoryNow,
    answerBy: hoursLater(4),
    priorityKey: hoursLater(4),
    reasons: [{ kind: 'pain', pain: 'new' }],
    version: 1,
    ...given,
    academyId,
    studentId,
  };
  return withAcademy(db, academyId, (tx) => tx.concern.create({ data }));
};
