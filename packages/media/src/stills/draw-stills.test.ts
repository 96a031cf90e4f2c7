import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { scratchFolder } from '../child/scratch-folder.ts';
import { transcoders } from '../choose-transcoder.ts';
import { paintClip } from '../made-clips.ts';
import { prepareClip } from '../prepare.ts';
import { drawStills } from './draw-stills.ts';
import { strokesOfWords, widthOfWords } from './letters.ts';
import { overlaySvg } from './overlay-svg.ts';
import { placeLabels } from './place-labels.ts';

const at = scratchFolder();
const mark = { point: 'lead-ankle', name: 'left ankle', x: 240, y: 150 };
const line = { x1: 100, y1: 180, x2: 100, y2: 100, name: 'ball line' };

/** Brightness of one pixel, 0 to 255, and whether it is of the colour of marks. */
const pixelsOf = async (path: string) => {
  const { data, info } = await sharp(path).raw().toBuffer({ resolveWithObject: true });
  return (x: number, y: number) => {
    const [r = 0, g = 0, b = 0] = data.subarray((y * info.width + x) * info.channels);
    return { grey: g, isMark: r > 130 && r - b > 50 };
  };
};

describe.each(transcoders)('pictures drawn with $name', (transcoder) => {
  beforeAll(async () => {
    if ((await transcoder.missing()) !== null) return;
    const timesS = Array.from({ length: 24 }, (_, frame) => frame / 30);
    await paintClip(at('clip.mp4'), { widthPx: 320, heightPx: 200, timesS, moving: { from: 12, to: 12 } });
    const outFolder = at(transcoder.name);
    await prepareClip({ sourcePath: at('clip.mp4'), outFolder, transcoder });
  });

  it('show exactly the frame that was chosen, its marks and its lines, and tell nothing else', async (ctx) => {
    const reason = await transcoder.missing();
    if (reason !== null) return ctx.skip(reason);
    const sourcePath = at(`${transcoder.name}/rendition.mp4`);
    const stills = [11, 12, 13, 99].map((frame) => ({
      ...{ sourcePath, frame, file: `still-${frame}.jpg`, marks: [mark], lines: [line] },
    }));
    const made = await drawStills({ stills, outFolder: at(`${transcoder.name}-stills`), transcoder });
    expect(made).toEqual(['still-11.jpg', 'still-12.jpg', 'still-13.jpg']);
    for (const frame of [11, 12, 13]) {
      const path = at(`${transcoder.name}-stills/still-${frame}.jpg`);
      const pixel = await pixelsOf(path);
      const striped = [...Array(40).keys()].filter((x) => pixel(20 + x, 190).grey > 130).length;
      // Stripes pass by in frame 12 alone.
      expect(striped > 10).toBe(frame === 12);
      expect(pixel(mark.x + 7, mark.y).isMark).toBe(true);
      expect(pixel(mark.x, mark.y - 7).isMark).toBe(true);
      // The gap at the centre leaves the point itself to be seen.
      expect(pixel(mark.x, mark.y).isMark).toBe(false);
      expect(pixel(line.x1, 130).grey).toBeGreaterThan(130);
      const { exif, icc, xmp, iptc, format } = await sharp(path).metadata();
      expect({ exif, icc, xmp, iptc, format }).toEqual({ format: 'jpeg' });
      expect(readFileSync(path).includes('Exif')).toBe(false);
    }
    const again = await drawStills({ stills: stills.slice(0, 1), outFolder: at('again'), transcoder });
    expect(readFileSync(at(`again/${again[0]}`))).toEqual(
      readFileSync(at(`${transcoder.name}-stills/still-11.jpg`)),
    );
  }, 30_000);
});

it('draws trail marks dashed and lead marks solid', () => {
  const size = { widthPx: 320, heightPx: 200 };
  const lead = overlaySvg({ marks: [mark], lines: [] }, size);
  const trail = overlaySvg({ marks: [{ ...mark, point: 'trail-ankle' }], lines: [] }, size);
  expect(lead).not.toContain('dasharray');
  expect(trail).toContain('dasharray');
});

describe('letters', () => {
  it('has a stroke for every letter, and one for what it does not know', () => {
    const strokes = [...'abcdefghijklmnopqrstuvwxyz'].map((one) => strokesOfWords(one, 0, 0, 12));
    expect(new Set(strokes).size).toBe(26);
    expect(strokes.every((one) => /d="M/.test(one))).toBe(true);
    expect(strokesOfWords('É', 0, 0, 12)).toBe(strokesOfWords('e', 0, 0, 12));
    expect(strokesOfWords('<', 0, 0, 12)).toContain('d="M0-2.6H2.6"');
  });

  it('knows how wide words are', () => {
    expect(widthOfWords('')).toBe(0);
    expect(widthOfWords('left ankle')).toBeGreaterThan(widthOfWords('left'));
  });
});

it('keeps the words within the picture and clear of one another', () => {
  const spots = [
    { words: 'left ankle', x: 700, y: 1100 },
    { words: 'right ankle', x: 690, y: 1104 },
    { words: 'ball', x: 400, y: 1278 },
    { words: 'middle of the hips', x: 20, y: 600 },
  ];
  const labels = placeLabels(spots, { widthPx: 720, heightPx: 1280 }, 38);
  for (const { words, x, y } of labels) {
    // Room for the outline of the letters, 0.4 of a line, on both sides.
    expect(x).toBeGreaterThanOrEqual(15);
    expect(x + widthOfWords(words) * 38).toBeLessThanOrEqual(705);
    expect(y).toBeLessThanOrEqual(1280);
  }
  const [left, right] = ['left ankle', 'right ankle'].map((name) =>
    labels.find(({ words }) => words === name),
  );
  expect((right?.y ?? 0) - (left?.y ?? 0)).toBeGreaterThanOrEqual(38);
});
