import type { Club } from '../marks/marks.ts';
import { seenRadiusMm } from './arc-geometry.ts';
import { arcPriors, type Known, usualPlane } from './arc-question.ts';
import {
  fatChance,
  missesGroundChance,
  type SwingSet,
  thinChance,
  type WayOut,
  waysOut,
} from './fat-risk.ts';
import type { ArcReading } from './read-arc.ts';
import { type CountedBalls, type DepthFrom, setDepths } from './set-depths.ts';
import { setSpread } from './set-spread.ts';
import { refusalOfSet, type SetRefusedWhy, wordsOfSet } from './set-words.ts';
import { shareRadius } from './share-radius.ts';

/** What is known of a student's set with one club. */
export type SetOfSwings = {
  readonly club: Club;
  /** As in the words of a submission; sand is refused. */
  readonly lie: string;
  /** This submission's and the student's recent swings; swings of one `setUp` share the level of their stick. */
  readonly swings: readonly { readonly setUp: string; readonly arc: ArcReading }[];
  /** Where the brushes of a recent line test start, mm, + past the line; null: there is none. */
  readonly lineTestMm: readonly number[] | null;
  readonly balls: CountedBalls | null;
};

/** A way to the goal: by so much, and that with two chances in three lies between; what it costs in thin shots. */
export type SetWay = WayOut & { readonly lowMm: number; readonly highMm: number };

export type FatRiskTold = {
  readonly kind: 'told';
  /** Chance that the club meets the ground more than 30 mm behind the ball, and its ends with two chances in three. */
  readonly fat: number;
  readonly fatLow: number;
  readonly fatHigh: number;
  readonly thin: number;
  readonly missesGround: number;
  /** The chance that the ways bring it to. */
  readonly goal: number;
  readonly forward: SetWay;
  readonly higher: SetWay;
  readonly lowPointMm: Known;
  readonly scatterMm: number;
  readonly depthMm: Known;
  readonly depthFrom: DepthFrom;
  readonly radiusMm: Known;
  readonly swings: number;
  readonly setUps: number;
  /** What it rests on, and what would make it surer, in sentences. */
  readonly used: string[];
  readonly missing: string[];
};
export type FatRiskRefused = {
  readonly kind: 'refused';
  readonly why: SetRefusedWhy;
  readonly words: string;
};
export type FatRisk = FatRiskTold | FatRiskRefused;

const goal = 0.1;

/**
 * How often a student's swings with a club meet the ground behind the ball, and what would bring that to one in ten: the
 * low point forward, or the arc higher at a cost in thin shots.
 *
 * @param set - at least one swing; all of one club
 * @param planeDeg - tilt of the plane; absent: the usual one of the club
 * @returns chances 0..1 and mm, or why none is told
 * @throws RangeError on numbers that are not finite, brushes or counts that are none
 * @source `fat-risk.ts` on the radius shared by the club (`share-radius.ts`), the spread of the set (`set-spread.ts`) and
 * its depth (`set-depths.ts`); worked values in the reference tests
 * @example fatRiskOfSet({ club: '8-iron', lie: 'mat', swings, lineTestMm: null, balls: { fat: 7, of: 10 } })
 */
export function fatRiskOfSet(set: SetOfSwings, planeDeg = usualPlane(set.club).value): FatRisk {
  const { club, lie, swings, lineTestMm, balls } = set;
  if (club === 'driver') return refusalOfSet('driver');
  if (lie === 'sand') return refusalOfSet('sand');
  if (swings.length === 0) return refusalOfSet('no-swing');
  const shared = shareRadius(
    swings.map(({ arc }) => arc),
    arcPriors(club).radiusMm,
  );
  const spread = setSpread(
    swings.map(({ setUp, arc }, i) => ({
      value: shared.lowPoints[i]?.value ?? Number.NaN,
      u: shared.lowPoints[i]?.u ?? Number.NaN,
      ...{ setUp, uTiltMm: arc.uTiltMm },
    })),
    shared.uSharedMm,
  );
  const radius = seenRadiusMm({ radiusMm: shared.radiusMm.value, planeDeg });
  const depths = setDepths({ spread, seenRadiusMm: radius, lineTestMm, balls });
  if (depths === null) return refusalOfSet(lineTestMm === null && balls === null ? 'no-depth' : 'do-not-fit');
  const ways = waysAt(depths.set);
  const fewer = waysAt(depths.shallow);
  const more = waysAt(depths.deep);
  if (ways === null || fewer === null || more === null) return refusalOfSet('do-not-fit');
  const between = (one: 'forward' | 'higher'): SetWay => ({
    ...ways[one],
    lowMm: Math.min(fewer[one].byMm, ways[one].byMm),
    highMm: Math.max(more[one].byMm, ways[one].byMm),
  });
  const fat = fatChance(depths.set);
  return {
    kind: 'told',
    fat,
    fatLow: Math.min(fat, fatChance(depths.shallow)),
    fatHigh: Math.max(fat, fatChance(depths.deep)),
    thin: thinChance(depths.set),
    missesGround: missesGroundChance(depths.set),
    goal,
    forward: between('forward'),
    higher: between('higher'),
    lowPointMm: spread.meanMm,
    scatterMm: spread.scatterMm,
    depthMm: depths.set.depthMm,
    depthFrom: depths.from,
    radiusMm: shared.radiusMm,
    swings: swings.length,
    setUps: spread.setUps,
    ...wordsOfSet({
      ...{ swings: swings.length, setUps: spread.setUps, from: depths.from, lie, balls },
      brushes: lineTestMm?.length ?? 0,
    }),
  };
}

/** What brings a set to the goal; null where nothing sensible does. */
const waysAt = (set: SwingSet): ReturnType<typeof waysOut> | null => {
  try {
    return waysOut(set, goal);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
};
