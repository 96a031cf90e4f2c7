import type { BandRow } from '../types.ts';
import { irons, type Range, row } from './row.ts';

const derived = { label: 'derived' } as const;
const ballRow = (clubs: readonly string[], range: Range): BandRow =>
  row('ball-inside-lead-heel', range, { clubs, source: 'common practice, no source; tolerance 20 mm' });

/** Address from the front, mm or per cent of the ankle distance. The ball moves back with the shorter club. */
export const addressFaceOnBands: readonly BandRow[] = [
  ballRow(['driver'], [0, 50]),
  ballRow(['fairway', 'hybrid'], [30, 80]),
  ballRow(['5-iron'], [60, 100]),
  ballRow(['6-iron'], [67, 110]),
  ballRow(['7-iron'], [73, 120]),
  ballRow(['8-iron'], [80, 130]),
  ballRow(['9-iron'], [90, 145]),
  ballRow(['wedge'], [100, 160]),
  // Heel to heel: 0.9 to 1.2 of the shoulders with an iron, 1.2 to 1.5 with a driver; shoulders about 380 mm across.
  row('stance-width', [280, 480], { clubs: irons, ...derived }),
  row('stance-width', [380, 620], { clubs: ['driver'], ...derived }),
  row('stance-width', [320, 540], { clubs: ['fairway', 'hybrid'], ...derived }),

  row('hip-middle-along-ankles', [50, 58], { clubs: irons }),
  row('hip-middle-along-ankles', [44, 56], { clubs: ['driver'], ...derived }),
  row('hip-middle-along-ankles', [47, 57], { clubs: ['fairway', 'hybrid'], ...derived }),
  row('hip-middle-behind-ball', [20, 110], { clubs: irons, ...derived }),
  row('neck-base-behind-ball', [20, 100], { clubs: irons }),
  row('neck-base-behind-ball', [50, 170], { clubs: ['driver'] }),
  // The ball lies under the lead ear; a head is about 150 mm wide.
  row('head-behind-ball', [30, 120], { clubs: irons, ...derived }),
  row('head-behind-ball', [60, 190], { clubs: ['driver'], ...derived }),
  row('trunk-lean-at-address', [-10, 4], { clubs: irons, ...derived }),
  row('trunk-lean-at-address', [-14, 2], { clubs: ['driver'], ...derived }),

  row('handle-ahead-of-lead-thigh', [-30, 30], { clubs: irons }),
  // The inside of the lead thigh lies within 20 mm of the ball of an iron, 75 mm ahead of hip-middle.
  row('handle-ahead-of-ball', [-30, 65], { clubs: irons, ...derived }),
  row('handle-ahead-of-hip-middle', [45, 150], { clubs: irons, ...derived }),
];
