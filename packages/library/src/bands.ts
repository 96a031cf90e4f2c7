import { addressBehindBands } from './bands/address-behind.ts';
import { addressFaceOnBands } from './bands/address-face-on.ts';
import { impactBands } from './bands/impact.ts';
import { wayBackBands } from './bands/way-back.ts';
import { wayDownBands } from './bands/way-down.ts';
import type { BandRow } from './types.ts';

/** In millimetres, degrees, a ratio or per cent of the ankle distance, as the measurement is. The first row that fits wins. */
export const bands: readonly BandRow[] = [
  ...addressFaceOnBands,
  ...addressBehindBands,
  ...wayBackBands,
  ...wayDownBands,
  ...impactBands,
];
