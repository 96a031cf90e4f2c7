import type { BandRow } from '../types.ts';
import { irons, long, row } from './row.ts';

const full = { lengths: long } as const;
const derived = { lengths: long, label: 'derived' } as const;
const behind = { views: ['down-the-line'] } as const;

/** Top to lead arm parallel: everything moves a little forward; a drop here is normal. Then shaft parallel. */
export const wayDownBands: readonly BandRow[] = [
  row('hip-shift-top-lead-arm-down', [30, 130], full),
  row('hip-shift-top-lead-arm-down-percent', [8, 32], derived),
  row('hip-height-top-lead-arm-down', [-60, 20], derived),
  row('head-shift-top-lead-arm-down', [0, 60], full),
  row('head-shift-top-lead-arm-down-percent', [0, 15], derived),
  row('head-height-top-lead-arm-down', [-60, 20], full),
  row('neck-base-shift-top-lead-arm-down', [0, 60], derived),
  row('neck-base-shift-top-lead-arm-down-percent', [0, 15], derived),
  row('neck-base-height-top-lead-arm-down', [-60, 20], derived),
  row('forearm-shaft-angle-at-lead-arm-down', [null, 105], full),
  row('grip-end-to-ball-line-at-shaft-parallel-down', [-100, 50], { clubs: irons }),
  row('tempo-ratio', [2, 4], full),

  // From behind, against the shaft at address.
  row('shaft-steeper-at-lead-arm-down', [-6, 6], behind),
  row('hands-above-address-shaft-at-lead-arm-down', [70, 165], behind),
  row('clubhead-outside-hands-at-shaft-parallel-down', [-80, 80], behind),
];
