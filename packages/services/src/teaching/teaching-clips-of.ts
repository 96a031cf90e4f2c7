import type { Tx } from '@ballfirst/db/with-academy';
import { causes } from '@ballfirst/library/causes';
import type { Reply } from '../operation-types.ts';

type Clip = Reply<'listTeachingClips'>['items'][number];

const nameOf = (cause: string): string => causes.find(({ id }) => id === cause)?.name ?? cause;

/** The academy's teaching clips in the order of the causes of the library. */
export const teachingClipsOf = async (tx: Tx, academyId: string): Promise<{ items: Clip[] }> => {
  const rows = await tx.teachingClip.findMany({
    where: { academyId, removedAt: null },
    include: { by: { select: { name: true } } },
  });
  const order = new Map(causes.map(({ id }, at) => [id, at]));
  const placeOf = (cause: string): number => order.get(cause) ?? causes.length;
  rows.sort((a, b) => placeOf(a.cause) - placeOf(b.cause));
  return {
    items: rows.map(({ cause, title, url, words, by, at }) => ({
      ...{ cause, causeName: nameOf(cause), title, url, words, by: by.name, at: at.toISOString() },
    })),
  };
};
