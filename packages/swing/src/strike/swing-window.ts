/** From when to when the picture moves most, in seconds. */
export type SwingWindow = { readonly fromS: number; readonly toS: number; readonly liveliestS: number };

/** A swing moves the picture at least so many times as much as its quiet part: common practice, no source. */
const livelyTimes = 2.5;
/** What belongs to one swing: it pauses at the top, but not for longer. */
const pauseS = 0.5;

/**
 * The part of a clip in which the picture moves most: around the largest difference between pictures, for as long as it
 * stays above a fifth of the way from the quiet level (the lower quarter) to the largest, pauses of half a second bridged.
 * (Frame differencing; thresholds: common practice, no source.)
 *
 * @param timesS when each picture is shown, seconds, rising
 * @param motion how much each differs from the one before, a second; the first is 0
 * @returns null where nothing stands out: a still clip, or one that moves throughout
 * @throws RangeError when there are not as many times as differences, or times do not rise
 */
export function swingWindow(timesS: readonly number[], motion: readonly number[]): SwingWindow | null {
  if (timesS.length !== motion.length) throw new RangeError('There must be one difference a picture.');
  if (timesS.some((time, index) => index > 0 && !(time > (timesS[index - 1] ?? time)))) {
    throw new RangeError('Pictures must follow one another.');
  }
  if (motion.length < 4) return null;
  const quiet = motion.toSorted((a, b) => a - b)[motion.length >> 2] ?? 0;
  const most = Math.max(...motion);
  if (!(most > 0) || most < quiet * livelyTimes) return null;
  const liveliest = motion.indexOf(most);
  const level = quiet + (most - quiet) / 5;
  const edge = (towards: 1 | -1): number => {
    let last = liveliest;
    for (let at = liveliest; at >= 0 && at < motion.length; at += towards) {
      if (Math.abs((timesS[at] ?? 0) - (timesS[last] ?? 0)) > pauseS) break;
      if ((motion[at] ?? 0) >= level) last = at;
    }
    return last;
  };
  const [first, last] = [edge(-1), edge(1)];
  // A difference lies between two pictures: the window begins with the earlier one.
  return {
    fromS: timesS[Math.max(0, first - 1)] ?? 0,
    toS: timesS[last] ?? 0,
    liveliestS: timesS[liveliest] ?? 0,
  };
}
