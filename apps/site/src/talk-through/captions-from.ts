import type { Body } from '@ballfirst/contracts/client';

export type Captions = Body<'captionTalkThrough'>['captions'];

const longest = 240;
const most = 80;
const stamp = /^(\d{1,2}):([0-5]\d)\s+(.+)$/;

type Line = { readonly atMs: number | null; readonly words: string };

const lineOf = (text: string): Line => {
  const found = stamp.exec(text);
  const [, minutes = '0', seconds = '0', words = text] = found ?? [];
  return {
    atMs: found === null ? null : (Number(minutes) * 60 + Number(seconds)) * 1000,
    words: words.slice(0, longest),
  };
};

/**
 * Captions from a text, a line each. A line may begin with its minute and second (0:12); lines between two that do are
 * spread over the time between by their length, as if all were spoken evenly.
 */
export const captionsFrom = (text: string, durationMs: number): Captions => {
  const lines = text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .slice(0, most)
    .map(lineOf);
  const captions: Captions = [];
  for (const [index, { atMs, words }] of lines.entries()) {
    const before = captions.at(-1)?.atMs ?? 0;
    if (atMs !== null) {
      captions.push({ atMs: Math.min(durationMs, Math.max(before, atMs)), words });
      continue;
    }
    if (index === 0) {
      captions.push({ atMs: 0, words });
      continue;
    }
    // From the line before to the next that says its time: as far along as its letters stand.
    const next = lines.findIndex((line, other) => other > index && line.atMs !== null);
    const end = next === -1 ? durationMs : Math.max(before, lines[next]?.atMs ?? durationMs);
    const stretch = lines.slice(index - 1, next === -1 ? undefined : next);
    const letters = stretch.reduce((sum, line) => sum + line.words.length, 0);
    const spoken = lines[index - 1]?.words.length ?? 0;
    captions.push({ atMs: Math.round(before + ((end - before) * spoken) / Math.max(1, letters)), words });
  }
  return captions;
};

const two = (value: number): string => String(value).padStart(2, '0');
/** An instant of a recording as minutes and seconds. */
export const clockOf = (atMs: number): string => {
  const seconds = Math.floor(atMs / 1000);
  return `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
};

/** The text that gives these captions again. */
export const captionText = (captions: Captions): string =>
  captions.map(({ atMs, words }) => `${clockOf(atMs)} ${words}`).join('\n');

/** What is said at an instant; null before the first caption. */
export const captionAt = (captions: Captions, atMs: number): string | null =>
  captions.findLast((caption) => caption.atMs <= atMs)?.words ?? null;
