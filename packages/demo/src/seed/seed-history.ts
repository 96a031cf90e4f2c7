import { sealAcademy } from '@ballfirst/services/audit/seal-academy';
import { academies } from './academies.ts';
import { systemContext } from './at-time.ts';
import { type Chapter, demoChapters, type When } from './chapters.ts';
import { type Members, membersOf } from './members.ts';
import type { DemoAcademy, Seeding } from './seed-demo.ts';
import { tellSwing } from './tell-swing.ts';

export type Telling = Seeding & {
  readonly demo: readonly Pick<DemoAcademy, 'id' | 'slug'>[];
  /** The instant that `seedDemo` took for now: the same story after every cut. */
  readonly from: Date;
  /** Called, and waited for, after each chapter. */
  readonly onProgress?: (told: number, of: number) => void | Promise<void>;
  /** Asked before each chapter. */
  readonly isStopped?: () => boolean;
};

type Page = { readonly academyId: string; readonly members: Members; readonly chapter: Chapter };
const order: readonly When[] = ['early', 'soon', 'later'];

/**
 * Tells what happened at the demo academies in the ninety days before, beside the running service: chapter by chapter,
 * each in a transaction of its own and once for ever, however often this is called.
 * @returns false when it was stopped before its end
 */
export const seedHistory = async (telling: Telling): Promise<boolean> => {
  const { resources, clipsFolder, onProgress, isStopped } = telling;
  const pages = await pagesOf(telling);
  for (const [index, { academyId, members, chapter }] of pages.entries()) {
    if (isStopped?.()) return false;
    const isNew = await tellSwing({ resources, clipsFolder, members, chapter });
    const next = pages[index + 1]?.chapter.key;
    if (isNew && next !== chapter.key) {
      await sealAcademy({ ctx: systemContext(resources, academyId, resources.clock.now()) });
    }
    if (isNew) await onProgress?.(index + 1, pages.length);
  }
  return true;
};

/** All chapters of all academies in the order in which they are told. */
const pagesOf = async ({ resources, demo, from }: Telling): Promise<Page[]> => {
  const pages: Page[] = [];
  for (const academy of academies) {
    const found = demo.find(({ slug }) => slug === academy.slug);
    if (found === undefined) continue;
    const members = await membersOf(resources, found);
    for (const chapter of demoChapters(academy, from)) pages.push({ academyId: found.id, members, chapter });
  }
  return order.flatMap((when) => pages.filter(({ chapter }) => chapter.told === when));
};
