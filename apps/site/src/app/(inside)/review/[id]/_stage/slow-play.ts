/** An eighth of the speed: a swing down of a quarter of a second takes two. */
export const slowBy = 8;

/** From a fifth of a second before impact to a tenth after it. Common practice, no source. */
const beforeS = 0.2;
const afterS = 0.1;

export type Stretch = { readonly from: number; readonly to: number };

/** The frames that are looped: around impact where it is marked, else around the frame that is shown. */
export const stretchAround = (timesS: readonly number[], frame: number): Stretch => {
  const at = timesS[frame] ?? 0;
  const from = timesS.findIndex((time) => time >= at - beforeS);
  const to = timesS.findLastIndex((time) => time <= at + afterS);
  return { from: Math.max(0, from), to: Math.max(from, to) };
};

/**
 * The frame that is due, played slowly since `begunMs`.
 *
 * @param stretch - played round and round; null: on to the end of the clip, and then held
 */
export const frameDue = (
  timesS: readonly number[],
  begun: { readonly frame: number; readonly atMs: number },
  nowMs: number,
  stretch: Stretch | null,
): number => {
  const last = timesS.length - 1;
  const start = timesS[begun.frame] ?? 0;
  const elapsedS = (nowMs - begun.atMs) / 1000 / slowBy;
  const dueAt = (timeS: number) =>
    Math.max(
      0,
      timesS.findLastIndex((time) => time <= timeS + 1e-9),
    );
  if (stretch === null) return Math.min(last, dueAt(start + elapsedS));
  const from = timesS[stretch.from] ?? 0;
  const lengthS = (timesS[stretch.to] ?? 0) - from;
  if (lengthS <= 0) return stretch.from;
  return dueAt(from + ((Math.max(0, start - from) + elapsedS) % lengthS));
};
