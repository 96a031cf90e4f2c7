import { expect, it } from 'vitest';
import { sameMoment } from './same-moment.ts';

const clip = (id: string, view = 'face-on') => ({ id, view });
const mark = (clipId: string, position: string, frame: number) => ({ clipId, position, frame });

it('takes the most telling moment that both have', () => {
  const marks = [
    mark('a', 'address', 3),
    mark('a', 'top', 40),
    mark('b', 'address', 5),
    mark('b', 'top', 44),
  ];
  expect(sameMoment([clip('a')], [clip('b')], marks)).toEqual({
    ...{ moment: 'top', before: { clipId: 'a', frame: 40 }, after: { clipId: 'b', frame: 44 } },
  });
});

it('compares only what was filmed from the same side', () => {
  const marks = [mark('a', 'top', 40), mark('b', 'top', 44), mark('c', 'top', 46)];
  expect(sameMoment([clip('a')], [clip('b', 'down-the-line')], marks)).toBeNull();
  const found = sameMoment([clip('a')], [clip('b', 'down-the-line'), clip('c')], marks);
  expect(found?.after.clipId).toBe('c');
});

it('has no pair where no moment is marked in both', () => {
  const marks = [mark('a', 'top', 40), mark('b', 'address', 5)];
  expect(sameMoment([clip('a')], [clip('b')], marks)).toBeNull();
});
