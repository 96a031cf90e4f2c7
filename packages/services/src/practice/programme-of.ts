import { ProblemError } from '@ballfirst/contracts/problems';
import { Place, ProgrammeStatus } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import { causeById } from '@ballfirst/library/causes';
import { painHoldSentence } from '@ballfirst/library/cautions';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { drillCardOf } from './drill-card-of.ts';
import { entriesOf, ladderOf } from './entries-of.ts';

/** What a programme is read with; entries in the order they were logged. */
export const programmeInclude = {
  student: { include: { membership: true } },
  entries: { orderBy: [{ at: 'asc' }, { id: 'asc' }] },
  checkIns: { where: { status: { in: ['scheduled', 'sent'] } }, orderBy: { dueAt: 'asc' }, take: 1 },
} as const satisfies Prisma.ProgrammeInclude;
export type FullProgramme = Prisma.ProgrammeGetPayload<{ include: typeof programmeInclude }>;

/** A programme the actor may see. @throws ProblemError not-found */
export const findProgramme = async (tx: Tx, ctx: Context, id: string): Promise<FullProgramme> => {
  const { academyId } = ctx;
  const row = await tx.programme.findUnique({
    where: { academyId_id: { academyId, id } },
    include: programmeInclude,
  });
  if (row === null) throw new ProblemError('not-found');
  requireReader(ctx, row.studentId);
  return row;
};

export const handOf = (student: { readonly hand: string }): PlayingHand =>
  student.hand === 'left' ? 'left' : 'right';

/** A programme as the contract says it. */
export const programmeOf = (row: FullProgramme): Reply<'readProgramme'> => {
  const place = Place.parse(row.place);
  const hand = handOf(row.student);
  const [checkIn] = row.checkIns;
  return {
    id: row.id,
    cause: row.cause,
    causeName: causeById(row.cause).name,
    place,
    weeklyMinutes: row.weeklyMinutes,
    rung: row.rung,
    status: ProgrammeStatus.parse(row.status),
    holdReason: row.status === 'held' ? painHoldSentence : null,
    drill: drillCardOf({ drillId: row.drillId, place, exaggeration: row.exaggeration }, hand),
    entries: entriesOf(ladderOf({ drillId: row.drillId, place }), row.entries, hand),
    nextCheckIn:
      checkIn === undefined
        ? null
        : {
            id: checkIn.id,
            asks: checkIn.asks === 'practice' ? 'practice' : 'clip',
            dueAt: checkIn.dueAt.toISOString(),
          },
    createdAt: row.createdAt.toISOString(),
  };
};
