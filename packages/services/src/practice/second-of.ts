import { Place } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Rung, RungId } from '@ballfirst/library/types';
import { ladderOf, rungId } from './entries-of.ts';

type Row = Prisma.ProgrammeGetPayload<{ include: { entries: true } }>;

/** One of the drills of a programme: its rungs, where the student stands on them, and the entries that were of it. */
export type Practised = {
  readonly drillId: string;
  readonly second: boolean;
  readonly ladder: readonly Rung[];
  readonly rung: RungId;
  readonly exaggeration: string;
  readonly entries: Row['entries'];
};

const entriesOf = (row: Row, second: boolean): Row['entries'] =>
  row.entries.filter((entry) => entry.second === second);

export const firstOf = (row: Row): Practised => ({
  drillId: row.drillId,
  second: false,
  ladder: ladderOf({ ...row, place: Place.parse(row.place) }),
  rung: rungId(row.rung),
  exaggeration: row.exaggeration,
  entries: entriesOf(row, false),
});

/** The drill that supports the first; null where there is none. One that was not begun stands on its first rung, mildly. */
export const secondOf = (row: Row): Practised | null => {
  const { secondDrillId, secondRung, ballsAtMost } = row;
  if (secondDrillId === null) return null;
  const ladder = ladderOf({ drillId: secondDrillId, place: Place.parse(row.place), ballsAtMost });
  return {
    drillId: secondDrillId,
    second: true,
    ladder,
    rung: secondRung === null ? (ladder[0]?.id ?? 'rehearsal') : rungId(secondRung),
    exaggeration: row.secondExaggeration ?? 'mild',
    entries: entriesOf(row, true),
  };
};

/** The drill of that name in a programme; absent: the first. Null: the programme has no such drill. */
export const practisedOf = (row: Row, drillId: string | undefined): Practised | null => {
  const first = firstOf(row);
  if (drillId === undefined || drillId === first.drillId) return first;
  const second = secondOf(row);
  return second?.drillId === drillId ? second : null;
};
