import type { View } from '@ballfirst/swing/marks/marks';
import type { Bin } from './calibration.ts';
import type { Coverage } from './coverage.ts';
import type { Summary } from './independent.ts';
import type { FaultTable } from './ranking.ts';
import type { TwoCauses } from './two-causes.ts';

type Blamed = { readonly n: number; readonly blamed: number };

/** All that the truth test finds. Shares are 0..1. */
export type TruthResults = {
  readonly coverage: readonly { readonly view: View; readonly rows: readonly Coverage[] }[];
  readonly byYaw: readonly {
    readonly least: number;
    readonly most: number;
    readonly n: number;
    readonly covered: number;
  }[];
  readonly statistical: readonly Coverage[];
  readonly misstated: readonly { readonly clicks: number; readonly covered: number }[];
  readonly calibration: readonly Bin[];
  readonly ranking: readonly FaultTable[];
  /** The same on the seeds the bench has always used and on others that only this reads. */
  readonly summaries: { readonly usual: Summary; readonly independent: Summary };
  readonly twoCauses: TwoCauses;
  readonly sound: readonly (Blamed & { readonly view: View })[];
  readonly blamedForFat: Blamed;
};
