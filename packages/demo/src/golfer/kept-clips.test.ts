import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { KeptLook } from '../seed/kept-files.ts';
import { clipPath, clipTruth, keptClips, swingOfClip, trailOfClip } from './kept-clips.ts';
import { truthOf } from './truth.ts';

const hashes: unknown = JSON.parse(readFileSync(new URL('../../clips/hashes.json', import.meta.url), 'utf8'));
const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');

const bytesOf = (name: string) => readFileSync(new URL(`../../clips/${name}`, import.meta.url));

describe('kept clips', () => {
  it.each(keptClips)('$id: what the machine says of it was said of this file', ({ id }) => {
    const look = KeptLook.parse(JSON.parse(bytesOf(`look/${id}.json`).toString('utf8')));
    expect(look.clip).toBe(sha256(readFileSync(clipPath(id))));
    expect(look.strip).toBe(sha256(bytesOf(`look/${id}.jpg`)));
    const { impact, window, strip } = look.suggestion;
    const truth = clipTruth(id);
    expect(strip.length).toBeGreaterThanOrEqual(6);
    expect(Math.max(...strip)).toBeLessThan(truth.frames);
    // Three standard uncertainties: the strike is heard where the golfer meets the ball.
    const away = Math.abs((impact?.frame ?? Number.NaN) - truth.positions.impact);
    expect(away).toBeLessThanOrEqual(3 * (impact?.uFrames ?? 0));
    expect(window?.first ?? Number.NaN).toBeLessThan(truth.positions.impact);
    expect(window?.last ?? Number.NaN).toBeGreaterThan(truth.positions.impact);
  });

  it('are the files that were rendered, from the plans that stand in the script', () => {
    expect(hashes).toEqual(
      keptClips.map((plan) => ({ plan, sha256: sha256(readFileSync(clipPath(plan.id))) })),
    );
  });

  it('show both views, both hands and both frame rates, small enough to keep in the tree', () => {
    const seen = (of: (clip: (typeof keptClips)[number]) => unknown) => new Set(keptClips.map(of));
    expect(seen((clip) => clip.camera.view)).toEqual(new Set(['face-on', 'down-the-line']));
    expect(seen((clip) => clip.hand)).toEqual(new Set(['right', 'left']));
    expect(keptClips.filter((clip) => clip.fps === 240).length).toBeGreaterThanOrEqual(2);
    expect(seen((clip) => clip.cause).size).toBeGreaterThanOrEqual(9);
    const bytes = keptClips.reduce((sum, clip) => sum + readFileSync(clipPath(clip.id)).length, 0);
    expect(bytes).toBeLessThan(6_000_000);
  });

  it.each(keptClips)('$id: the kept truth is what the golfer computes today', (clip) => {
    const truth = truthOf(swingOfClip(clip), clip.camera, clip.fps, `${clip.id}.mp4`);
    expect(clipTruth(clip.id)).toEqual(JSON.parse(JSON.stringify(truth)));
  });

  it.each(keptClips.filter(({ camera }) => camera.view === 'face-on'))(
    '$id: the clubhead near the ball is kept on both sides of it',
    (clip) => {
      const kept = JSON.parse(bytesOf(`trail/${clip.id}.json`).toString('utf8'));
      expect(kept).toEqual(trailOfClip(clip));
      const { impact } = clipTruth(clip.id).positions;
      const frames = kept.map(([frame]: [number]) => frame);
      expect(Math.min(...frames)).toBeLessThan(impact);
      expect(Math.max(...frames)).toBeGreaterThan(impact);
    },
  );
});
