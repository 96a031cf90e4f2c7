import type { BandRow } from './types.ts';

const irons = ['5-iron', '6-iron', '7-iron', '8-iron', '9-iron', 'wedge'] as const;
const long = ['three-quarter', 'full'] as const;

type Range = readonly [low: number | null, high: number | null];
type Where = {
  readonly clubs?: BandRow['clubs'];
  readonly lengths?: BandRow['lengths'];
  readonly label?: BandRow['label'];
  readonly source?: string;
};

const row = (key: string, [low, high]: Range, where: Where = {}): BandRow => ({
  key,
  clubs: where.clubs ?? 'any',
  lengths: where.lengths ?? 'any',
  low,
  high,
  label: where.label ?? 'common practice',
  source: where.source ?? 'common practice, no source',
});
const ballRow = (clubs: readonly string[], range: Range): BandRow =>
  row('ball-inside-lead-heel', range, { clubs, source: 'common practice, no source; tolerance 20 mm' });

/** In millimetres, degrees or per cent of the ankle distance, as the measurement is. The first row that fits wins. */
export const bands: readonly BandRow[] = [
  // Address. The ball moves back with the shorter club; 6-, 7- and 9-iron lie between their neighbours.
  ballRow(['driver'], [0, 50]),
  ballRow(['fairway', 'hybrid'], [30, 80]),
  ballRow(['5-iron'], [60, 100]),
  ballRow(['6-iron'], [67, 110]),
  ballRow(['7-iron'], [73, 120]),
  ballRow(['8-iron'], [80, 130]),
  ballRow(['9-iron'], [90, 145]),
  ballRow(['wedge'], [100, 160]),
  row('hip-middle-along-ankles', [50, 58], { clubs: irons }),
  row('hip-middle-behind-ball', [20, 110], { clubs: irons, label: 'derived' }),
  row('neck-base-behind-ball', [20, 100], { clubs: irons }),
  // The ball lies under the lead ear; a head is about 150 mm wide.
  row('head-behind-ball', [30, 120], { clubs: irons, label: 'derived' }),
  row('handle-ahead-of-lead-thigh', [-30, 30], { clubs: irons }),
  // A shaft leaning 0 to 6 degrees forward over 0.86 m of height.
  row('handle-ahead-of-ball', [0, 90], { clubs: irons, label: 'derived' }),
  row('handle-ahead-of-hip-middle', [60, 170], { clubs: irons, label: 'derived' }),

  // Address to top: shifts in mm, and of the ankle distance so that a smaller player is not read in a tall one's.
  row('hip-shift-address-top', [-30, 30], { lengths: long }),
  row('hip-shift-address-top-percent', [-8, 8], { lengths: long, label: 'derived' }),
  row('head-shift-address-top', [-50, 30], { lengths: long }),
  row('head-shift-address-top-percent', [-12, 8], { lengths: long, label: 'derived' }),
  row('head-height-address-top', [-40, 30], { lengths: long }),
  row('trunk-lean-at-top', [-15, 5], { lengths: long }),
  row('head-ahead-of-hip-middle-at-top', [-180, 60], { lengths: long, label: 'derived' }),

  // Top to lead arm parallel: everything moves a little forward; a drop here is normal.
  row('hip-shift-top-lead-arm-down', [30, 130], { lengths: long }),
  row('hip-shift-top-lead-arm-down-percent', [8, 32], { lengths: long, label: 'derived' }),
  row('head-shift-top-lead-arm-down', [0, 60], { lengths: long }),
  row('head-shift-top-lead-arm-down-percent', [0, 15], { lengths: long, label: 'derived' }),
  row('head-height-top-lead-arm-down', [-60, 20], { lengths: long }),

  // Shaft parallel down, impact, finish.
  row('grip-end-to-ball-line-at-shaft-parallel-down', [-100, 50], { clubs: irons }),
  row('hip-shift-address-impact', [30, 120]),
  row('head-shift-address-impact', [-80, 20], { clubs: ['driver'] }),
  row('head-shift-address-impact', [-30, 30]),
  row('head-height-address-impact', [-40, 35]),
  row('neck-base-height-address-impact', [-25, 30]),
  row('shaft-lean-at-impact', [-3, 3], { clubs: ['driver'] }),
  row('shaft-lean-at-impact', [2, 8], { clubs: ['wedge'] }),
  row('shaft-lean-at-impact', [4, 12], { clubs: irons }),
  // A shaft leaning 4 to 12 degrees forward over 0.78 m of height.
  row('handle-ahead-of-ball-at-impact', [50, 170], { clubs: irons, label: 'derived' }),
  row('hip-past-ball-at-finish', [0, null]),
  row('hip-over-lead-ankle-at-finish', [-60, 120]),
];
