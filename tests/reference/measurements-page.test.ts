import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { measurementsPage, sketches } from '@ballfirst/diagnosis/handbook/handbook';
import { causes } from '@ballfirst/library/causes';
import { measurementKeys } from '@ballfirst/swing/definitions/measurement-names';
import { describe, expect, it } from 'vitest';

const docs = join(import.meta.dirname, '..', '..', 'docs');

describe('docs/measurements.md', () => {
  const hint = 'write it anew: npm run -w @ballfirst/diagnosis docs';

  it('is what is computed', () => {
    expect(readFileSync(join(docs, 'measurements.md'), 'utf8') === measurementsPage(), hint).toBe(true);
  });

  it('has its drawings, and no others', () => {
    const drawn = sketches();
    for (const [path, svg] of drawn) expect(readFileSync(join(docs, path), 'utf8') === svg, hint).toBe(true);
    const kept = readdirSync(join(docs, 'pictures', 'measurements'));
    expect(kept.map((file) => `pictures/measurements/${file}`).sort()).toEqual([...drawn.keys()].sort());
  });

  it('leaves no measurement and no cause out', () => {
    const page = measurementsPage();
    for (const key of measurementKeys) expect(page).toContain(`(\`${key}\`)`);
    for (const { id } of causes) expect(page).toContain(`(\`${id}\`)`);
    expect(page).not.toMatch(/undefined|NaN/);
  });
});
