// Writes docs/measurements.md and its drawings.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { measurementsPage, sketches } from '../src/handbook/handbook.ts';

const docs = join(import.meta.dirname, '..', '..', '..', 'docs');
const pictures = join(docs, 'pictures', 'measurements');
rmSync(pictures, { recursive: true, force: true });
mkdirSync(pictures, { recursive: true });
for (const [path, svg] of sketches()) writeFileSync(join(docs, path), svg);
writeFileSync(join(docs, 'measurements.md'), measurementsPage());
