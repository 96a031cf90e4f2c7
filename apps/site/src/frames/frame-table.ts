/** The server's table of frame times of a rendition, in seconds, rising. */
export type FrameTable = {
  readonly width: number;
  readonly height: number;
  readonly timesS: readonly number[];
};

const isTable = (found: unknown): found is FrameTable =>
  typeof found === 'object' &&
  found !== null &&
  'timesS' in found &&
  Array.isArray(found.timesS) &&
  found.timesS.length > 0 &&
  found.timesS.every((time) => typeof time === 'number');

/** @throws Error when the table cannot be had */
export const readFrameTable = async (address: string, signal: AbortSignal): Promise<FrameTable> => {
  const answer = await fetch(address, { signal });
  const found: unknown = answer.ok ? await answer.json() : null;
  if (!isTable(found)) throw new Error(`No frame times at ${address} (${answer.status}).`);
  return found;
};

/**
 * The instant in the middle of a frame's showing, in seconds: asked there, a decoder or a video element cannot round
 * to a neighbour.
 */
export const middleOf = (timesS: readonly number[], frame: number): number => {
  const at = timesS[frame];
  if (at === undefined) throw new RangeError(`There is no frame ${frame}.`);
  const next = timesS[frame + 1];
  if (next !== undefined) return (at + next) / 2;
  const before = timesS[frame - 1];
  return at + (before === undefined ? 0.01 : (at - before) / 2);
};

/** The frame that is shown at an instant: the last one that begins no later, with half a millisecond of grace. */
export const frameAt = (timesS: readonly number[], timeS: number): number => {
  let low = 0;
  let high = timesS.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((timesS[middle] ?? 0) <= timeS + 0.0005) low = middle;
    else high = middle - 1;
  }
  return low;
};
