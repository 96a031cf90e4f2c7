import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { gripSize } from './grip-size.ts';
import { gripPath, keptGrips } from './kept-grips.ts';
import { paintGrip } from './paint-grip.ts';

const kept = new URL('../../clips/grip/hashes.json', import.meta.url);
const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');

/** Width and height as the first frame header says them (ITU-T T.81, B.2.2: FF C0, length, precision, lines, samples a line). */
const sizeOf = (jpeg: Buffer) => {
  const head = jpeg.indexOf(Buffer.from([0xff, 0xc0]));
  return { widthPx: jpeg.readUInt16BE(head + 7), heightPx: jpeg.readUInt16BE(head + 5) };
};

describe('drawn photos of a grip', () => {
  it('are the files that were drawn, from the plans that stand in the script', () => {
    const now = keptGrips.map((plan) => ({ plan, sha256: sha256(readFileSync(gripPath(plan.id))) }));
    expect(JSON.parse(readFileSync(kept, 'utf8'))).toEqual(now);
  });

  it.each(keptGrips)('$id: opens as a JPEG of its size and is small enough to keep', (plan) => {
    for (const bytes of [readFileSync(gripPath(plan.id)), paintGrip(plan)]) {
      expect(sizeOf(bytes)).toEqual(gripSize);
      expect(bytes.length).toBeLessThan(90_000);
    }
  });

  it('differ by the turn of the hands, and a turn that is no grip is refused', () => {
    const [plan] = keptGrips;
    if (plan === undefined) throw new Error('No grip is kept.');
    expect(paintGrip(plan).equals(paintGrip({ ...plan, turnDeg: -20 }))).toBe(false);
    expect(paintGrip(plan).equals(paintGrip(plan))).toBe(true);
    expect(() => paintGrip({ ...plan, turnDeg: 60 })).toThrow(RangeError);
    expect(() => paintGrip({ ...plan, turnDeg: Number.NaN })).toThrow(RangeError);
  });
});
