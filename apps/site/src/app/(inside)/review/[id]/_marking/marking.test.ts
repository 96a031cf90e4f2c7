import { expect, it } from 'vitest';
import { aimAt } from './aim-at.ts';
import { goBack, goOn, noHistory, remember } from './history.ts';
import {
  dropMark,
  frameOfMoment,
  type Mark,
  momentOfFrame,
  nextPlace,
  putMark,
  putTrail,
} from './marking.ts';
import { mergeThree, sameContent, withItem } from './merge-three.ts';
import { cameraMoves, carriedTo } from './still-points.ts';

const mark = (point: Mark['point'], x: number, position: Mark['position'] = 'address'): Mark => ({
  position,
  point,
  frame: position === 'address' ? 4 : 40,
  x,
  y: 10,
  source: 'coach',
});
const pass = [
  { position: 'address', point: 'ball' },
  { position: 'address', point: 'hip-middle' },
  { position: 'top', point: 'hip-middle' },
] as const;
const empty = { marks: [], observations: [] };
const size = { widthPx: 720, heightPx: 1280 };

it('keeps one mark a place and finds the moment of a mark', () => {
  const twice = putMark(putMark(empty, mark('ball', 1)), mark('ball', 2));
  expect(twice.marks).toEqual([mark('ball', 2)]);
  expect(frameOfMoment(twice.marks, 'address')).toBe(4);
  expect(frameOfMoment(twice.marks, 'top')).toBeNull();
  expect(momentOfFrame(twice.marks, 4, pass[2])).toBe('address');
  expect(momentOfFrame(twice.marks, 9, pass[2])).toBe('top');
  expect(momentOfFrame(twice.marks, 9, pass[1])).toBeNull();
});

it('goes on to the next place without a mark, round to the start, and ends', () => {
  expect(nextPlace(pass, [], pass[0])).toBe(pass[0]);
  expect(nextPlace(pass, [mark('ball', 1)], pass[0])).toBe(pass[1]);
  const hips = [mark('hip-middle', 1), mark('hip-middle', 1, 'top')];
  expect(nextPlace(pass, hips, pass[2])).toBe(pass[0]);
  expect(nextPlace(pass, [mark('ball', 1), ...hips], pass[0])).toBeNull();
});

it('lays own changes over what another coach stored, taken away ones too', () => {
  const base = { marks: [mark('grip-end', 1)], observations: [] };
  const own = dropMark(putMark(base, mark('ball', 5)), { position: 'address', point: 'grip-end' });
  const stored = {
    marks: [mark('grip-end', 1), mark('head-centre', 7)],
    observations: [{ key: 'falls-back', answer: 'yes' as const }],
  };
  const { content, conflicts, others } = mergeThree(base, own, stored);
  expect(content).toEqual({
    marks: [mark('ball', 5), mark('head-centre', 7)],
    observations: stored.observations,
  });
  expect([conflicts, others]).toEqual([[], true]);
});

it('asks where two coaches changed one thing, and keeps its own until told', () => {
  const base = { marks: [mark('ball', 1)], observations: [] };
  const own = putMark(base, mark('ball', 5));
  const stored = putMark(base, mark('ball', 9));
  const { content, conflicts } = mergeThree(base, own, stored);
  expect(content).toEqual(own);
  expect(conflicts).toEqual([{ key: 'address/ball', mine: mark('ball', 5), theirs: mark('ball', 9) }]);
  expect(withItem(content, 'address/ball', mark('ball', 9))).toEqual(stored);
  expect(withItem(content, 'address/ball', null)).toEqual(empty);
});

it('joins the clubhead over frames like marks: each frame by itself', () => {
  const at = (frame: number, x = 1) => ({ frame, x, y: 2 });
  const base = { marks: [], observations: [], trail: [at(10)] };
  const own = putTrail(base, at(12));
  const stored = putTrail(base, at(11));
  expect(mergeThree(base, own, stored)).toMatchObject({
    content: { trail: [at(10), at(11), at(12)] },
    ...{ conflicts: [], others: true },
  });
  const both = mergeThree(base, putTrail(base, at(10, 5)), putTrail(base, at(10, 9)));
  expect(both.conflicts).toEqual([{ key: 'trail/10', mine: at(10, 5), theirs: at(10, 9) }]);
  expect(withItem(both.content, 'trail/10', at(10, 9)).trail).toEqual([at(10, 9)]);
  // A draft that was kept before there were trails takes nothing away.
  expect(mergeThree(empty, empty, base).content.trail).toEqual([at(10)]);
  expect(sameContent(empty, { ...empty, trail: [] })).toBe(true);
  expect(sameContent(empty, base)).toBe(false);
});

it('takes its own words that came back for its own', () => {
  const own = putMark(empty, mark('ball', 5));
  expect(mergeThree(empty, own, own)).toMatchObject({ content: own, conflicts: [], others: false });
  expect(sameContent(own, putMark(empty, mark('ball', 5)))).toBe(true);
  expect(sameContent(own, empty)).toBe(false);
});

it('goes back and on again, and forgets what lies ahead once something new is done', () => {
  const one = remember(noHistory, 'a');
  const back = goBack(one, 'b');
  expect(back).toEqual({ now: 'a', history: { past: [], future: ['b'] } });
  expect(back && goOn(back.history, back.now)).toEqual({ now: 'b', history: { past: ['a'], future: [] } });
  expect(goBack(noHistory, 'a')).toBeNull();
  expect(back && remember(back.history, 'a')).toEqual({ past: ['a'], future: [] });
});

it('carries still points to other moments until they are confirmed there', () => {
  const marks = [mark('ball', 100), mark('hip-middle', 90), mark('hip-middle', 91, 'top')];
  expect(carriedTo(marks, 40, 'top', size)).toEqual([{ ...mark('ball', 100, 'top'), source: 'carried' }]);
  expect(carriedTo(marks, 4, 'address', size)).toEqual([]);
  expect(carriedTo([...marks, mark('ball', 101, 'top')], 40, 'top', size)).toEqual([]);
});

it('carries nothing once the camera has moved', () => {
  const marks = [mark('ball', 100), mark('ball', 130, 'top')];
  expect(cameraMoves(marks, size)).toBe(true);
  expect(carriedTo(marks, 60, 'impact', size)).toEqual([]);
  expect(cameraMoves([mark('ball', 100), mark('ball', 112, 'top')], size)).toBe(false);
});

it('begins to aim where the point was at the nearest moment', () => {
  const marks = [mark('hip-middle', 90), mark('hip-middle', 95, 'top'), mark('ball', 100)];
  const middle = { x: 360, y: 640 };
  expect(aimAt(marks, { position: 'lead-arm-parallel-down', point: 'hip-middle' }, null, middle).x).toBe(95);
  expect(aimAt(marks, { position: 'address', point: 'grip-end' }, { x: 3, y: 4 }, middle)).toEqual({
    ...{ x: 3, y: 4 },
  });
  expect(aimAt([], { position: 'address', point: 'ball' }, null, middle)).toEqual(middle);
});
