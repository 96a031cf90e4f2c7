import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { contentHash, sourceFiles } from '../../launch/content-hash.mjs';

let root: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'ballfirst-hash-'));
  mkdirSync(join(root, 'src', 'inner'), { recursive: true });
  writeFileSync(join(root, 'src', 'a.ts'), 'a');
  writeFileSync(join(root, 'src', 'inner', 'b.ts'), 'b');
});
afterEach(() => rmSync(root, { recursive: true }));

describe('contentHash', () => {
  const hash = () => contentHash(root, [join(root, 'src'), join(root, 'absent.json')]);

  it('stays while nothing a build reads changes', () => {
    const before = hash();
    writeFileSync(join(root, 'src', 'a.test.ts'), 'a test');
    mkdirSync(join(root, 'src', 'dist'));
    writeFileSync(join(root, 'src', 'dist', 'main.mjs'), 'built');
    expect(hash()).toBe(before);
  });

  it.each<[string, () => void]>([
    ['other bytes', () => writeFileSync(join(root, 'src', 'a.ts'), 'A')],
    ['a new file', () => writeFileSync(join(root, 'src', 'c.ts'), '')],
    ['a lost file', () => rmSync(join(root, 'src', 'inner', 'b.ts'))],
    ['an input that was absent', () => writeFileSync(join(root, 'absent.json'), '{}')],
  ])('changes with %s', (_, change) => {
    const before = hash();
    change();
    expect(hash()).not.toBe(before);
  });

  it('tells apart where one file ends and the next begins', () => {
    const before = hash();
    writeFileSync(join(root, 'src', 'a.ts'), '');
    writeFileSync(join(root, 'src', 'inner', 'b.ts'), 'ab');
    expect(hash()).not.toBe(before);
  });
});

describe('sourceFiles', () => {
  it('goes into folders, in a fixed order', () => {
    expect(sourceFiles([join(root, 'src')])).toEqual([
      join(root, 'src', 'a.ts'),
      join(root, 'src', 'inner', 'b.ts'),
    ]);
  });
});
