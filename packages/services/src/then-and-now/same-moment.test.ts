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

it('takes the moment that the coach shows in the reply before any other, but set-up', () => {
  const marks = ['address', 'top', 'finish'].flatMap((position) => [
    mark('a', position, 1),
    mark('b', position, 2),
  ]);
  const momentOf = (shown: string[]) => sameMoment([clip('a')], [clip('b')], marks, shown)?.moment;
  expect(momentOf([])).toBe('finish');
  expect(momentOf(['address', 'top'])).toBe('top');
  expect(momentOf(['address'])).toBe('finish');
  expect(momentOf(['address', 'impact', 'no moment'])).toBe('finish');
});
