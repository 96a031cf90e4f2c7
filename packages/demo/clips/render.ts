import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { addSound } from '../src/golfer/add-sound.ts';
import { clipPath, keptClips, soundOfClip, swingOfClip, trailOfClip } from '../src/golfer/kept-clips.ts';
import { renderClip, renderPoster } from '../src/golfer/render-clip.ts';
import { truthOf } from '../src/golfer/truth.ts';

// Renders every kept clip, its truth, its clubhead near the ball and `hashes.json`: `npm run -w @ballfirst/demo render [id ...]`. Needs ffmpeg; then `npm run looks`.
const here = (name: string) => fileURLToPath(new URL(name, import.meta.url));
const wanted = process.argv.slice(2);
for (const clip of keptClips) {
  if (wanted.length > 0 && !wanted.includes(clip.id)) continue;
  const swing = swingOfClip(clip);
  await renderClip(swing, clip.camera, clip.look, clip.fps, clipPath(clip.id));
  const truth = truthOf(swing, clip.camera, clip.fps, `${clip.id}.mp4`);
  await addSound(clipPath(clip.id), soundOfClip(clip));
  writeFileSync(here(`truth/${clip.id}.json`), `${JSON.stringify(truth, null, 1)}\n`);
  const trail = trailOfClip(clip);
  if (trail.length > 0) writeFileSync(here(`trail/${clip.id}.json`), `${JSON.stringify(trail)}\n`);
  await renderPoster(clipPath(clip.id), (truth.positions.address + 0.5) / clip.fps, here(`${clip.id}.jpg`));
  console.log(`${clip.id}.mp4 ${readFileSync(clipPath(clip.id)).length} bytes`);
}
const hashes = keptClips.map((plan) => ({
  plan,
  sha256: createHash('sha256')
    .update(readFileSync(clipPath(plan.id)))
    .digest('hex'),
}));
writeFileSync(here('hashes.json'), `${JSON.stringify(hashes, null, 2)}\n`);
