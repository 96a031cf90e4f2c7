import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { clipPath, clipTruth, keptClips } from './kept-clips.ts';
import { makeSwing } from './swing.ts';
import { golferCauses } from './swing-shape.ts';
import { truthOf } from './truth.ts';

const hashes: unknown = JSON.parse(readFileSync(new URL('../../clips/hashes.json', import.meta.url), 'utf8'));
const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');

describe('kept clips', () => {
  it('are the files that were rendered, from the plans that stand in the script', () => {
    expect(hashes).toEqual(
      keptClips.map((plan) => ({ plan, sha256: sha256(readFileSync(clipPath(plan.id))) })),
    );
  });

  it('show every cause, a sound swing and a left-hander, each small enough to keep in the tree', () => {
    expect(new Set(keptClips.map((clip) => clip.cause))).toEqual(new Set(golferCauses));
    expect(keptClips.some((clip) => clip.hand === 'left')).toBe(true);
    for (const clip of keptClips) expect(readFileSync(clipPath(clip.id)).length).toBeLessThan(450_000);
  });

  it.each(keptClips)('$id: the kept truth is what the golfer computes today', (clip) => {
    const truth = truthOf(makeSwing(clip.cause, clip.hand), clip.camera, clip.fps, `${clip.id}.mp4`);
    expect(clipTruth(clip.id)).toEqual(JSON.parse(JSON.stringify(truth)));
  });
});
