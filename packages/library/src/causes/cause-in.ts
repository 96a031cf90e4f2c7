import type { Cause, CauseGroup } from '../types.ts';
import { startingValue } from './sign.ts';

/** Chance of a cause among players, by the heaviest fault it brings about: common practice, to be learned over. */
const startingRate: Readonly<Record<1 | 2 | 3, number>> = { 3: 0.45, 2: 0.3, 1: 0.15 };

type Written = Omit<Cause, 'group' | 'trainability' | 'baseRate' | 'source' | 'unseen'> &
  Partial<Pick<Cause, 'unseen'>>;

const heaviest = (brings: Cause['brings']): 1 | 2 | 3 => {
  const weights = Object.values(brings);
  if (weights.includes(3)) return 3;
  return weights.includes(2) ? 2 : 1;
};

/** Makes the causes of one group, which are equally hard to train. */
export const causeIn =
  (group: CauseGroup, trainability: number) =>
  (written: Written): Cause => ({
    unseen: {},
    ...written,
    group,
    trainability,
    baseRate: startingRate[heaviest(written.brings)],
    source: startingValue,
  });
