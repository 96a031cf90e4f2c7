import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gripPath, keptGrips } from '../src/golfer/kept-grips.ts';
import { paintGrip } from '../src/golfer/paint-grip.ts';

// Draws the kept photos of a grip and `grip/hashes.json`: `npm run -w @ballfirst/demo render-grips`.
mkdirSync(fileURLToPath(new URL('grip/', import.meta.url)), { recursive: true });
const hashes = keptGrips.map((plan) => {
  const bytes = paintGrip(plan);
  writeFileSync(gripPath(plan.id), bytes);
  return { plan, sha256: createHash('sha256').update(bytes).digest('hex') };
});
writeFileSync(
  fileURLToPath(new URL('grip/hashes.json', import.meta.url)),
  `${JSON.stringify(hashes, null, 2)}\n`,
);
