import { type FaultsLatelyRow, readFaultsLatelyRows } from '@ballfirst/db/reads/faults-lately';
import { wilsonInterval } from '@ballfirst/numbers/wilson-interval';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';
import { changeOf } from './change-of.ts';
import { nameOfKey } from './name-of-key.ts';
import { teachNext } from './teach-next.ts';

type Lately = Reply<'readFaultsLately'>;
type Row = Lately['week']['faults'][number];
type Kind = FaultsLatelyRow['kind'];
type Span = FaultsLatelyRow['span'];

/** Faults and causes by count over seven and thirty days: by students, so that one who sends much counts once. */
export const readFaultsLately = async ({ ctx }: Pick<Call<'readFaultsLately'>, 'ctx'>): Promise<Lately> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  const rows = await readFaultsLatelyRows(ctx.resources.db, { academyId, now: ctx.resources.clock.now() });
  const find = (span: Span, kind: Kind, key: string | null) =>
    rows.find((row) => row.span === span && row.kind === kind && row.key === key);
  const studentsOf = (span: Span, kind: Kind, key: string | null): number =>
    find(span, kind, key)?.students ?? 0;
  const counted = (span: Span, kind: Kind, key: string) => ({
    successes: studentsOf(span, kind, key),
    n: studentsOf(span, kind, null),
  });
  const listOf = (span: 'week' | 'month', kind: Kind): Row[] =>
    rows
      .flatMap((row): Row[] => {
        if (row.span !== span || row.kind !== kind || row.key === null) return [];
        const n = studentsOf(span, kind, null);
        return [
          {
            id: row.key,
            name: nameOfKey(kind, row.key),
            ...{ swings: row.swings, students: row.students },
            share: { share: row.students / n, ...wilsonInterval(row.students, n) },
            change: changeOf(counted('week', kind, row.key), counted('before', kind, row.key)),
          },
        ];
      })
      .sort((a, b) => b.students - a.students || b.swings - a.swings || a.name.localeCompare(b.name));
  const spanOf = (span: 'week' | 'month'): Lately['week'] => ({
    days: span === 'week' ? 7 : 30,
    swings: find(span, 'fault', null)?.swings ?? 0,
    faultStudents: studentsOf(span, 'fault', null),
    causeStudents: studentsOf(span, 'cause', null),
    faults: listOf(span, 'fault'),
    causes: listOf(span, 'cause'),
  });
  const [week, month] = [spanOf('week'), spanOf('month')];
  return { week, month, teachNext: teachNext(week) ?? teachNext(month) };
};
