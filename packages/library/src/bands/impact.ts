import type { BandRow } from '../types.ts';
import { irons, long, row, short } from './row.ts';

const derived = { label: 'derived' } as const;
const behind = { views: ['down-the-line'] } as const;

/** Impact and finish. A slow, short swing moves less. */
export const impactBands: readonly BandRow[] = [
  row('hip-shift-address-impact', [10, 100], { lengths: short, ...derived }),
  row('hip-shift-address-impact', [30, 120]),
  row('hip-shift-address-impact-percent', [3, 25], { lengths: short, ...derived }),
  row('hip-shift-address-impact-percent', [8, 30], derived),
  row('hip-height-address-impact', [-30, 60], derived),
  row('head-shift-address-impact', [-80, 20], { clubs: ['driver'] }),
  row('head-shift-address-impact', [-30, 30]),
  row('head-shift-address-impact-percent', [-20, 5], { clubs: ['driver'], ...derived }),
  row('head-shift-address-impact-percent', [-8, 8], derived),
  row('head-height-address-impact', [-40, 35]),
  row('neck-base-shift-address-impact', [-60, 20], { clubs: ['driver'], ...derived }),
  row('neck-base-shift-address-impact', [-30, 40]),
  row('neck-base-shift-address-impact-percent', [-8, 10], derived),
  row('neck-base-height-address-impact', [-25, 30]),
  row('shaft-lean-at-address', [0, 6], { clubs: irons }),
  row('shaft-lean-at-address', [-5, 3], { clubs: ['driver'], ...derived }),
  row('shaft-lean-at-impact', [-3, 3], { clubs: ['driver'] }),
  row('shaft-lean-at-impact', [2, 8], { clubs: ['wedge'] }),
  row('shaft-lean-at-impact', [4, 12], { clubs: irons }),
  // A shaft leaning 4 to 12 degrees forward over 0.78 m of height.
  row('handle-ahead-of-ball-at-impact', [50, 170], { clubs: irons, ...derived }),
  row('trail-heel-lift-at-impact', [10, null], { lengths: long }),
  row('lead-elbow-after-impact', [null, 18]),
  // Attack of -1.9 to -5 degrees on an arc of 1.3 m puts it 50 to 126 mm ahead: closed form; the attacks are from memory. Two
  // centimetres either way are a player's own.
  row('low-point-ahead-of-ball', [30, 145], { clubs: irons, lengths: long, ...derived }),
  row('hip-past-ball-at-finish', [0, null]),
  row('hip-over-lead-ankle-at-finish', [-60, 120]),

  // From behind.
  row('loss-of-trunk-bend-address-impact', [-8, 8], behind),
  row('seat-toward-ball-address-impact', [-80, 30], behind),
  row('hands-toward-ball-address-impact', [-30, 65], behind),
  row('hands-height-address-impact', [-30, 50], behind),
];
