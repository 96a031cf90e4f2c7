import { ProblemError } from '@ballfirst/contracts/problems';
import { Place, ProgrammeStatus } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import { causeById } from '@ballfirst/library/causes';
import { painHoldSentence } from '@ballfirst/library/cautions';
import { drillById } from '@ballfirst/library/drills';
import type { Rung } from '@ballfirst/library/types';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { requireReader } from '../authorise.ts';
import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';
import { drillCardOf } from './drill-card-of.ts';
import { entriesOf, stepAfter } from './entries-of.ts';
import { firstOf, type Practised, secondOf } from './second-of.ts';
import { sessionOf } from './session-of.ts';

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

type SecondShown = Reply<'readProgramme'>['second'];

/** The drill that supports the first, with where the student stands on it; null where there is none. */
const secondShown = (row: FullProgramme, of: Practised | null, hand: PlayingHand): SecondShown => {
  const { secondMinutes } = row;
  if (of === null || secondMinutes === null) return null;
  return {
    drill: drillCardOf({ ...of, place: Place.parse(row.place) }, hand),
    minutes: secondMinutes,
    rung: of.rung,
    done: of.entries.length > 0 && stepAfter(of, of.entries).done,
  };
};

/** The entries of both drills, newest first. */
const allEntries = (drills: readonly Practised[], hand: PlayingHand): Reply<'readProgramme'>['entries'] =>
  drills
    .flatMap((of) => entriesOf(of, of.entries, hand))
    .sort((a, b) => b.at.localeCompare(a.at) || b.id.localeCompare(a.id));

/** The session on the present rung; of a ladder that has changed since, on its first one. */
const sessionNow = (row: FullProgramme, ladder: readonly Rung[]): Reply<'readProgramme'>['session'] => {
  const drill = drillById(row.drillId);
  const rung = ladder.find(({ id }) => id === row.rung) ?? ladder[0];
  return sessionOf({
    rung: rung?.id ?? 'rehearsal',
    daysPerWeek: row.daysPerWeek,
    minutes: row.sessionMinutes ?? drill.minutes,
    // Without a ball as many swings as are sound; with one no more than there are.
    atMost: rung?.ball === true ? (row.ballsAtMost ?? drill.ballsAtMost) : drill.ballsAtMost,
  });
};

/** A programme as the contract says it. */
export const programmeOf = (
  row: FullProgramme,
  overCorrection: Reply<'readProgramme'>['overCorrection'],
): Reply<'readProgramme'> => {
  const place = Place.parse(row.place);
  const hand = handOf(row.student);
  const [checkIn] = row.checkIns;
  const first = firstOf(row);
  const second = secondOf(row);
  const { ladder, exaggeration } = first;
  return {
    id: row.id,
    cause: row.cause,
    causeName: causeById(row.cause).name,
    place,
    weeklyMinutes: row.weeklyMinutes,
    rung: row.rung,
    status: ProgrammeStatus.parse(row.status),
    holdReason: row.status === 'held' ? painHoldSentence : null,
    drill: drillCardOf({ drillId: row.drillId, place, exaggeration, ladder }, hand),
    session: sessionNow(row, ladder),
    second: secondShown(row, second, hand),
    overCorrection,
    entries: allEntries(second === null ? [first] : [first, second], hand),
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
