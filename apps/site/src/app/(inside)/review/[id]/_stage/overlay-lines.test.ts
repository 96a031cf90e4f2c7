import { expect, it } from 'vitest';
import type { Mark } from '../_marking/marking.ts';
import { overlayLines } from './overlay-lines.ts';

const size = { widthPx: 720, heightPx: 1280 };
const mark = (point: Mark['point'], x: number, y: number, position: Mark['position'] = 'address'): Mark => ({
  ...{ position, point, x, y, source: 'coach' },
  frame: position === 'address' ? 0 : 50,
});

it('draws face-on what the marks give, and nothing without them', () => {
  expect(overlayLines([], 'face-on', 'address', size)).toEqual([]);
  const marks = [
    mark('ball', 400, 1100),
    mark('grip-end', 420, 700),
    mark('lead-ankle', 460, 1080),
    mark('trail-ankle', 260, 1080),
    mark('hip-middle', 350, 690),
    mark('hip-middle', 330, 690, 'top'),
  ];
  expect(overlayLines(marks, 'face-on', 'top', size)).toEqual([
    { kind: 'ball-line', x1: 400, y1: 1100, x2: 400, y2: 256 },
    { kind: 'ankle-middle', x1: 360, y1: 1080, x2: 360, y2: 690 },
    { kind: 'hips', x1: 350, y1: 690, x2: 330, y2: 690 },
    { kind: 'shaft', x1: 400, y1: 1100, x2: 420, y2: 700 },
  ]);
});

it('draws from behind the shaft of address on beyond the hands, and later ones at their moment', () => {
  const marks = [
    mark('grip-end', 300, 700),
    mark('clubhead', 500, 1100),
    mark('seat-line', 200, 680),
    mark('grip-end', 310, 500, 'lead-arm-parallel-down'),
    mark('clubhead', 250, 200, 'lead-arm-parallel-down'),
  ];
  const kinds = (moment: Mark['position'] | null) =>
    overlayLines(marks, 'down-the-line', moment, size).map(({ kind }) => kind);
  expect(kinds('address')).toEqual(['seat-line', 'shaft']);
  expect(kinds('lead-arm-parallel-down')).toEqual(['seat-line', 'shaft', 'shaft']);
  expect(overlayLines(marks, 'down-the-line', null, size)[1]).toEqual({
    ...{ kind: 'shaft', x1: 500, y1: 1100, x2: 140, y2: 380 },
  });
});
