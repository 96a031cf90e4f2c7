import { expect, it } from 'vitest';
import { cachePictures } from './picture-cache.ts';

type Fake = { close(): void };

const source = () => {
  const log: string[] = [];
  let atWork = 0;
  return {
    log,
    exact: true,
    async picture(frame: number) {
      atWork += 1;
      if (atWork > 1) log.push('two at once');
      await Promise.resolve();
      atWork -= 1;
      log.push(`decode ${frame}`);
      const fake: Fake = { close: () => log.push(`close ${frame}`) };
      return fake as ImageBitmap;
    },
    close: () => log.push('close source'),
  };
};

it('decodes a frame once and one frame at a time', async () => {
  const from = source();
  const cache = cachePictures(from);
  await Promise.all([cache.picture(1), cache.picture(2), cache.picture(1)]);
  expect(from.log).toEqual(['decode 1', 'decode 2']);
});

it('lets the oldest go and closes what it gave away', async () => {
  const from = source();
  const cache = cachePictures(from);
  for (let frame = 0; frame < 41; frame += 1) await cache.picture(frame);
  await Promise.resolve();
  expect(from.log).toContain('close 0');
  expect(from.log).not.toContain('close 1');
  cache.close();
  await expect(cache.picture(99)).rejects.toThrow('closed');
});

it('goes on after a frame that failed', async () => {
  const from = source();
  const fails = {
    ...from,
    picture: (frame: number) => (frame === 1 ? Promise.reject(new Error('bad')) : from.picture(frame)),
  };
  const cache = cachePictures(fails);
  await expect(cache.picture(1)).rejects.toThrow('bad');
  await expect(cache.picture(2)).resolves.toBeDefined();
});
