import { ballFence } from './drills/ball-fence.ts';
import { flatTowel } from './drills/flat-towel.ts';
import { leadSideStart } from './drills/lead-side-start.ts';
import { lineBrush } from './drills/line-brush.ts';
import { pastTheLine } from './drills/past-the-line.ts';
import { setUpPhoto } from './drills/set-up-photo.ts';
import type { Drill } from './types.ts';

/** Every built-in drill. */
export const drills: readonly Drill[] = [
  lineBrush,
  leadSideStart,
  flatTowel,
  setUpPhoto,
  ballFence,
  pastTheLine,
];

const byId = new Map(drills.map((drill) => [drill.id, drill]));

/** @throws RangeError on an unknown drill */
export const drillById = (id: string): Drill => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`No drill is called "${id}".`);
  return found;
};
