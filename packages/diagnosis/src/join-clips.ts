import type { Reading } from '@ballfirst/swing/measurement';

/**
 * The readings of several clips of one swinger as one list: what moves the readings of one clip, its camera and its clicks,
 * moves none of another, so that the sources of each clip get numbers of their own.
 *
 * @param clips - the readings of each clip
 * @example joinClips([readingsOf(first).readings, readingsOf(second).readings])
 */
export function joinClips(clips: readonly (readonly Reading[])[]): readonly Reading[] {
  let from = 0;
  return clips.flatMap((readings) => {
    const first = from;
    const joined = readings.map((reading) => {
      const { felt } = reading;
      if (felt === undefined) return reading;
      const sources = felt.sources.map((source) => {
        from = Math.max(from, first + source + 1);
        return first + source;
      });
      return { ...reading, felt: { sources, effects: felt.effects } };
    });
    return joined;
  });
}
