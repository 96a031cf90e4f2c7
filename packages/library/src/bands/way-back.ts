import type { BandRow } from '../types.ts';
import { long, row } from './row.ts';

const full = { lengths: long } as const;
const derived = { lengths: long, label: 'derived' } as const;

/** Address to top: shifts in mm, and of the ankle distance so that a smaller player is not read in a tall one's. */
export const wayBackBands: readonly BandRow[] = [
  row('hip-shift-address-top', [-30, 30], full),
  row('hip-shift-address-top-percent', [-8, 8], derived),
  row('hip-height-address-top', [-40, 30], derived),
  row('head-shift-address-top', [-50, 30], full),
  row('head-shift-address-top-percent', [-12, 8], derived),
  row('head-height-address-top', [-40, 30], full),
  row('neck-base-shift-address-top', [-50, 30], derived),
  row('neck-base-shift-address-top-percent', [-12, 8], derived),
  row('neck-base-height-address-top', [-40, 30], derived),
  row('trunk-lean-at-top', [-15, 5], full),
  row('head-ahead-of-hip-middle-at-top', [-180, 40], derived),
  row('clubhead-outside-hands-at-shaft-parallel-back', [-100, 100], { views: ['down-the-line'] }),
];
