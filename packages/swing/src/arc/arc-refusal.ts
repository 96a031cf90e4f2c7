import type { ArcQuestion } from './arc-question.ts';

export type ArcRefusedWhy =
  | 'no-stick'
  | 'too-few-frames'
  | 'too-few-marks'
  | 'one-side-only'
  | 'span-too-short'
  | 'doubt-too-large';

/** Why no arc is told, in words for a coach. */
export type ArcRefusal = { readonly why: ArcRefusedWhy; readonly words: string };

const words: Readonly<Record<ArcRefusedWhy, string>> = {
  'no-stick': 'No stick on the target line is marked: nothing says what is level.',
  'too-few-frames': 'Fewer than 120 frames a second: the club is seen too seldom near the ball.',
  'too-few-marks': 'The clubhead is marked on fewer than three frames.',
  'one-side-only':
    'The clubhead is marked on one side of the ball only: marks before it alone tell no low point.',
  'span-too-short': 'The marks reach less than 45 cm from first to last.',
  'doubt-too-large': 'The doubt is larger than what the low point could tell.',
};

export const refuseArc = (why: ArcRefusedWhy): ArcRefusal => ({ why, words: words[why] });

const leastMarks = 3;
const leastSpanMm = 450;
/** "120" frames a second, as phones count them: 119.88, or a hair less where times are added up. */
const leastRate = 119;
/** More clubhead marks than any clip shows near the ball. */
const mostMarks = 200;

/**
 * Whether an arc may be asked for at all.
 *
 * @returns the reason against it, or null
 * @throws RangeError on a number that is not finite, frames out of order, two marks on one frame, or an absurd count
 */
export function refusalBefore({ marks, framesPerSecond, tilt }: ArcQuestion): ArcRefusal | null {
  if (marks.length > mostMarks) throw new RangeError(`${marks.length} clubhead marks are too many.`);
  marks.forEach(({ timeS, xMm, zMm }, i) => {
    if (![timeS, xMm, zMm].every(Number.isFinite)) {
      throw new RangeError(`Clubhead mark ${i + 1} is not a number.`);
    }
    const before = marks[i - 1];
    if (before !== undefined && !(timeS > before.timeS)) {
      throw new RangeError(`Clubhead mark ${i + 1} is not later than the one before it.`);
    }
    if (before !== undefined && !(xMm > before.xMm)) {
      throw new RangeError(
        `Clubhead mark ${i + 1} does not lie closer to the target than the one before it.`,
      );
    }
  });
  if (tilt === null) return refuseArc('no-stick');
  if (!(framesPerSecond >= leastRate)) return refuseArc('too-few-frames');
  if (marks.length < leastMarks) return refuseArc('too-few-marks');
  const before = marks.filter(({ xMm }) => xMm < 0).length;
  if (before === 0 || before === marks.length) return refuseArc('one-side-only');
  const span = (marks.at(-1)?.xMm ?? 0) - (marks[0]?.xMm ?? 0);
  return span < leastSpanMm ? refuseArc('span-too-short') : null;
}
