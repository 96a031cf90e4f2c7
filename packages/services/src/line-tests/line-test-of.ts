import type { Prisma } from '@ballfirst/db/generated/client';
import { lineTest } from '@ballfirst/swing/arc/line-test';
import type { Reply } from '../operation-types.ts';

/** Who noted it, by name. */
export const lineTestInclude = { by: { select: { name: true } } } as const satisfies Prisma.LineTestInclude;
type Row = Prisma.LineTestGetPayload<{ include: typeof lineTestInclude }>;

/** A line test with its mean and the doubt of it. */
export const lineTestOf = (row: Row): Reply<'listLineTests'>['items'][number] => {
  const { meanStartMm, sdMm, lowMm, highMm, behind } = lineTest(row.startsMm);
  return {
    ...{ id: row.id, at: row.at.toISOString(), localDate: row.localDate, by: row.by.name },
    ...{ startsMm: row.startsMm, behind, meanStartMm, sdMm, lowMm, highMm },
  };
};
