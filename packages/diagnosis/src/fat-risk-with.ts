import { type FatRisk, fatRiskOfSet } from '@ballfirst/swing/arc/fat-risk-of-set';
import type { ArcNotRead, ArcReading } from '@ballfirst/swing/arc/read-arc';
import type { CountedBalls } from '@ballfirst/swing/arc/set-depths';
import type { Setting, SwingLength } from '@ballfirst/swing/marks/marks';

/** What is known of a student's set with one club beside the clip that is looked at. */
export type StudentSet = {
  readonly lie: string;
  /** The set-up of the clip that is looked at: its submission. */
  readonly setUp: string;
  /** This submission's and recent swings with the clubhead marked; the clip itself may be among them. */
  readonly swings: readonly {
    readonly clipId: string;
    readonly setUp: string;
    readonly swingLength: SwingLength;
    readonly arc: ArcReading;
  }[];
  /** Where the brushes of the newest line test start, mm, + past the line. */
  readonly lineTestMm: readonly number[] | null;
  readonly balls: CountedBalls | null;
};

type Marked = {
  readonly trail?: readonly unknown[];
  readonly setting: Setting;
  readonly set?: StudentSet | null;
  readonly clipId?: string;
};
const alone: StudentSet = { lie: '', setUp: 'this', swings: [], lineTestMm: null, balls: null };

/**
 * How often the set that a clip belongs to meets the ground behind the ball. Swings of another length are left out.
 *
 * @param arc - what the clip itself tells; refused: the set is not told either, in the same words
 * @returns null where the clubhead is not marked over frames, or not seen face-on
 */
export function fatRiskWith(arc: ArcReading | ArcNotRead, marked: Marked): FatRisk | null {
  const { trail = [], setting, clipId } = marked;
  if (trail.length === 0 || setting.view !== 'face-on') return null;
  if ('why' in arc) return { kind: 'refused', why: 'no-swing', words: arc.words };
  const { lie, setUp, swings, lineTestMm, balls } = marked.set ?? alone;
  const others = swings.filter((one) => one.clipId !== clipId && one.swingLength === setting.swingLength);
  return fatRiskOfSet({
    ...{ club: setting.club, lie, lineTestMm, balls },
    swings: [{ setUp, arc }, ...others],
  });
}
