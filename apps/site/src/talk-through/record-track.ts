import type { Body } from '@ballfirst/contracts/client';

export type Track = Body<'saveTalkThrough'>['track'];
export type TalkStep = Track[number];
/** What the stage shows: the frame, the part of it, and what is pointed at. */
export type Shown = Omit<TalkStep, 'atMs'>;

/** A hand that points moves smoothly enough when it is noted so often: twelve times a second. */
const apartMs = 84;
/** As the service takes them: three minutes of pointing without a rest. */
const most = 2400;
const rounded = (value: number): number => Math.round(value * 10) / 10;
const tidy = ({ frame, times, x, y, point }: Shown): Shown => ({
  frame,
  times: Math.round(times * 100) / 100,
  x: rounded(x),
  y: rounded(y),
  point: point === null ? null : { x: rounded(point.x), y: rounded(point.y) },
});
const same = (a: Shown, b: Shown): boolean =>
  a.frame === b.frame &&
  a.times === b.times &&
  a.x === b.x &&
  a.y === b.y &&
  a.point?.x === b.point?.x &&
  a.point?.y === b.point?.y;

/**
 * The track with what is shown from now on. Steps that come faster than a hand points replace one another, so that the
 * last of them counts; what did not change is not noted again.
 */
export const withStep = (track: Track, atMs: number, shown: Shown): Track => {
  const next = { atMs: Math.max(0, Math.round(atMs)), ...tidy(shown) };
  const last = track.at(-1);
  if (last === undefined) return [{ ...next, atMs: 0 }];
  if (same(last, next)) return track;
  if (next.atMs - last.atMs < apartMs && track.length > 1)
    return [...track.slice(0, -1), { ...next, atMs: last.atMs }];
  return track.length < most ? [...track, { ...next, atMs: Math.max(next.atMs, last.atMs) }] : track;
};

/** What is shown at an instant of the recording: the last step that began by then. */
export const stepAt = (track: Track, atMs: number): TalkStep | null => {
  let low = 0;
  let high = track.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((track[middle]?.atMs ?? 0) <= atMs) low = middle;
    else high = middle - 1;
  }
  return track[low] ?? null;
};
