import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import { strikeOnsets } from '@ballfirst/swing/strike/strike-sound';
import { nearestFrame, suggestImpact } from '@ballfirst/swing/strike/suggest-impact';
import { type SwingWindow, swingWindow } from '@ballfirst/swing/strike/swing-window';
import { meanRate, type RenditionTable } from '../header/frame-times.ts';
import type { RgbPicture } from '../jpeg.ts';
import { fittedSize } from '../rendition-size.ts';
import { soundRate, type Transcoder } from '../transcoder.ts';
import { evenly, stripJpeg } from './film-strip.ts';
import { differenceOf, lumaOf } from './motion.ts';

/** What a rendition suggests: where to look first, the frame for the poster, and the strip of film. */
export type Looked = {
  readonly suggestion: Suggestion;
  readonly posterFrame: number;
  readonly strip: Buffer;
};

/** From so many frames a second on the key frames, every tenth, follow a swing closely enough. */
const keyFramesFrom = 100;
const smallLongSidePx = 160;

type Seen = { readonly frame: number; readonly timeS: number; readonly picture: RgbPicture };

/** Listens to a rendition for the strike and looks where its picture moves. */
export async function lookAt(
  transcoder: Transcoder,
  path: string,
  table: RenditionTable,
  signal?: AbortSignal,
): Promise<Looked> {
  const { seen, motion } = await watch(transcoder, path, table, signal);
  const window = swingWindow(
    seen.map(({ timeS }) => timeS),
    motion,
  );
  const sound = await transcoder.sound(path, signal);
  const onsets = sound === null ? [] : strikeOnsets(sound, soundRate);
  const [firstS, lastS] = [table.timesS[0] ?? 0, table.timesS.at(-1) ?? 0];
  const chosen = evenly(
    seen.map(({ timeS }) => timeS),
    window?.fromS ?? firstS,
    window?.toS ?? lastS,
  ).flatMap((index) => seen[index] ?? []);
  return {
    suggestion: {
      impact: suggestImpact(onsets, window, table.timesS),
      window: window && framesOf(window, table),
      strip: chosen.map(({ frame }) => frame),
    },
    posterFrame:
      window === null
        ? Math.floor(table.timesS.length * stillShare)
        : nearestFrame(table.timesS, window.liveliestS),
    strip: await stripJpeg(chosen.map(({ picture }) => picture)),
  };
}

/** Where nothing moves: early in the clip the player stands over the ball. */
const stillShare = 0.1;

const framesOf = (window: SwingWindow, { timesS }: RenditionTable) => ({
  first: nearestFrame(timesS, window.fromS),
  last: nearestFrame(timesS, window.toS),
});

/** Small pictures, and how much each moved a second since the one before. */
async function watch(
  transcoder: Transcoder,
  path: string,
  table: RenditionTable,
  signal?: AbortSignal,
): Promise<{ seen: readonly Seen[]; motion: readonly number[] }> {
  const keyFramesOnly = meanRate(table.timesS) >= keyFramesFrom;
  const frames = keyFramesOnly ? table.keys : [...table.timesS.keys()];
  const size = fittedSize({ widthPx: table.width, heightPx: table.height }, smallLongSidePx);
  const seen: Seen[] = [];
  const motion: number[] = [];
  let before: { luma: Uint8Array; timeS: number } | undefined;
  await transcoder.pictures({
    ...{ path, ...size, keyFramesOnly },
    take: (rgb) => {
      const frame = frames[seen.length];
      const timeS = frame === undefined ? undefined : table.timesS[frame];
      if (frame === undefined || timeS === undefined) return;
      const luma = lumaOf(rgb);
      motion.push(before === undefined ? 0 : differenceOf(before.luma, luma) / (timeS - before.timeS));
      before = { luma, timeS };
      seen.push({ frame, timeS, picture: { ...size, rgb } });
    },
    ...(signal ? { signal } : {}),
  });
  if (seen.length !== frames.length) throw new Error(`${seen.length} of ${frames.length} pictures were seen`);
  return { seen, motion };
}
