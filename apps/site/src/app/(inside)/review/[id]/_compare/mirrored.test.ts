import { expect, it } from 'vitest';
import { mirroredLine, partBeside } from './mirrored.ts';

const size = { widthPx: 720, heightPx: 1280 };

it('turns a line over', () => {
  const line = { kind: 'ball-line', x1: 100, y1: 900, x2: 120, y2: 300 } as const;
  expect(mirroredLine(line, size)).toEqual({ ...line, x1: 620, x2: 600 });
  expect(mirroredLine(mirroredLine(line, size), size)).toEqual(line);
});

it('looks as far along and down in a picture of another size, and at the other side of a film that is turned over', () => {
  const other = { widthPx: 360, heightPx: 640 };
  const zoom = { times: 2, x: 540, y: 640 };
  const part = { x: 180, y: 160, width: 180, height: 320 };
  expect(partBeside(size, zoom, other, false)).toEqual({ seen: part, drawn: part });
  expect(partBeside(size, zoom, other, true)).toEqual({ seen: part, drawn: { ...part, x: 0 } });
});
