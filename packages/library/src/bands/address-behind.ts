import type { BandRow } from '../types.ts';
import { irons, type Range, row } from './row.ts';

const views = ['down-the-line'] as const;
const behind = (key: string, clubs: readonly string[], range: Range): BandRow =>
  row(key, range, { clubs, views });
const shortIrons = ['8-iron', '9-iron', 'wedge'];
const longIrons = ['5-iron', '6-iron', '7-iron'];
const fairways = ['fairway', 'hybrid'];

/** Address from behind. Longer clubs: farther away, flatter, more upright a back. */
export const addressBehindBands: readonly BandRow[] = [
  behind('trunk-bend-at-address', irons, [30, 45]),
  behind('trunk-bend-at-address', fairways, [25, 42]),
  behind('trunk-bend-at-address', ['driver'], [22, 40]),
  behind('hands-to-thighs-at-address', irons, [100, 190]),
  behind('hands-to-thighs-at-address', fairways, [100, 210]),
  behind('hands-to-thighs-at-address', ['driver'], [120, 240]),
  behind('hands-ahead-of-toe-line', irons, [-55, 120]),
  behind('hands-ahead-of-toe-line', fairways, [-20, 140]),
  behind('hands-ahead-of-toe-line', ['driver'], [-10, 160]),
  behind('ball-ahead-of-toe-line', shortIrons, [340, 560]),
  behind('ball-ahead-of-toe-line', longIrons, [400, 620]),
  behind('ball-ahead-of-toe-line', fairways, [480, 740]),
  behind('ball-ahead-of-toe-line', ['driver'], [560, 860]),
  row('toe-line-to-target-stick', [-3, 3], { views }),
  behind('shaft-angle-at-address', shortIrons, [52, 68]),
  behind('shaft-angle-at-address', longIrons, [50, 66]),
  behind('shaft-angle-at-address', fairways, [46, 62]),
  behind('shaft-angle-at-address', ['driver'], [40, 58]),
];
