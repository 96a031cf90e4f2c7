import { Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { causes } from '@ballfirst/library/causes';
import { faultById } from '@ballfirst/library/faults';
import type { FaultId, Sign } from '@ballfirst/library/types';
import {
  type Balls,
  type Measured,
  type ProgrammeVerdict,
  programmeVerdict,
} from '@ballfirst/progress/programme-verdict';
import { faultOf } from '../review/fault-of.ts';

/** SD between swings of one player in one set-up, by unit: common practice, no source. */
const withinSd: Readonly<Record<string, number>> = { mm: 12, deg: 2.5, percent: 3, ratio: 0.2 };

export type StudentVerdict = ProgrammeVerdict & {
  readonly causeId: string;
  /** The pre-named measurement; null where the cause has none. */
  readonly key: string | null;
  readonly faultId: FaultId;
  readonly swings: { readonly before: Date; readonly after: Date };
  readonly balls: { readonly before: Balls; readonly after: Balls };
};

/**
 * How the newest programme of each student goes: the swing it was given for against the newest one sent since. A student
 * with no later swing has no verdict yet.
 */
export const verdictsOf = async (
  tx: Tx,
  academyId: string,
  studentIds: readonly string[],
): Promise<ReadonlyMap<string, StudentVerdict>> => {
  const programmes = await tx.programme.findMany({
    where: { academyId, studentId: { in: [...studentIds] } },
    include: { submission: { include: { measurements: true } }, student: { select: { hand: true } } },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
    distinct: ['studentId'],
  });
  const swings = await tx.submission.findMany({
    where: {
      academyId,
      studentId: { in: programmes.map(({ studentId }) => studentId) },
      status: { in: ['waiting', 'answered'] },
    },
    include: { measurements: true },
    orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
    distinct: ['studentId'],
  });
  const newest = new Map(swings.map((swing) => [swing.studentId, swing]));
  const verdicts = new Map<string, StudentVerdict>();
  for (const { studentId, cause, submission, student } of programmes) {
    const latest = newest.get(studentId);
    if (latest === undefined || latest.sentAt <= submission.sentAt) continue;
    const faultId = faultOf(null, { ...submission, hand: student.hand });
    const sign = preNamed(cause);
    const readings = { before: submission.measurements, after: latest.measurements };
    const unit = readings.before.find(({ key }) => key === sign?.key)?.unit ?? 'mm';
    const balls = { before: ballsOf(submission.tally, faultId), after: ballsOf(latest.tally, faultId) };
    verdicts.set(studentId, {
      causeId: cause,
      key: sign?.key ?? null,
      faultId,
      swings: { before: submission.sentAt, after: latest.sentAt },
      balls,
      ...programmeVerdict({
        before: { measured: measuredOf(readings.before, sign), tally: balls.before },
        after: { measured: measuredOf(readings.after, sign), tally: balls.after },
        ...edgesOf(sign, readings.before),
        withinSd: withinSd[unit] ?? 0,
      }),
    });
  }
  return verdicts;
};

type Row = {
  readonly key: string;
  readonly unit: string;
  readonly value: number;
  readonly u: number;
  readonly bandLow: number | null;
  readonly bandHigh: number | null;
};

/** The measurement a cause is judged by, named before anything was measured: its first measured sign in the library. */
export const preNamed = (causeId: string): Sign | null =>
  causes.find(({ id }) => id === causeId)?.signs.find(({ kind }) => kind === 'measured') ?? null;

const measuredOf = (rows: readonly Row[], sign: Sign | null): Measured | null => {
  const row = rows.find(({ key }) => key === sign?.key);
  return row === undefined ? null : { value: row.value, u: row.u };
};

/** The band to come into: past the edge of the sign, or the band the measurement was read against. */
export const edgesOf = (
  sign: Sign | null,
  rows: readonly Row[],
): { low: number | null; high: number | null } => {
  const row = rows.find(({ key }) => key === sign?.key);
  const edge = sign?.edge;
  if (sign === null || edge === undefined) return { low: row?.bandLow ?? null, high: row?.bandHigh ?? null };
  return sign.direction === 'below' ? { low: edge, high: null } : { low: null, high: edge };
};

const counted = new Set(['fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky']);

const ballsOf = (stored: unknown, fault: FaultId): Balls => {
  const tally = Tally.parse(stored);
  const opposite = faultById(fault).oppositeMiss;
  const count = (of: FaultId | null): number =>
    of !== null && counted.has(of) ? tally[of as keyof typeof tally & FaultId] : 0;
  return { balls: tally.balls, fault: count(fault), opposite: count(opposite) };
};
