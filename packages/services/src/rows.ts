import type { Prisma } from '@ballfirst/db/generated/client';

/** What a submission is read with wherever its contract shape is made. */
export const submissionInclude = {
  student: { include: { membership: true } },
  clips: { orderBy: { createdAt: 'asc' } },
  claimant: true,
  reply: { select: { id: true, status: true } },
} as const satisfies Prisma.SubmissionInclude;
export type SubmissionRow = Prisma.SubmissionGetPayload<{ include: typeof submissionInclude }>;

export const studentInclude = { membership: true, academy: true } as const satisfies Prisma.StudentInclude;
export type StudentRow = Prisma.StudentGetPayload<{ include: typeof studentInclude }>;

export type ClipRow = Prisma.ClipGetPayload<object>;
export type ProgrammeRow = Prisma.ProgrammeGetPayload<object>;
