import { expect, it } from 'vitest';
import type { Decoding } from './frame-source.ts';
import { cachePictures } from './picture-cache.ts';

type Fake = { close(): void };

/** A source with a key frame every `run` frames that notes what it decodes and what is closed. */
const source = (run = 1) => {
  const log: string[] = [];
  let atWork = 0;
  const fakeOf = (frame: number) => {
    const fake: Fake = { close: () => log.push(`close ${frame}`) };
    return fake as ImageBitmap;
  };
  return {
    log,
    exact: true,
    async decode({ wanted, alone, give, signal }: Decoding) {
      atWork += 1;
      if (atWork > 1) log.push('two at once');
      log.push(`decode ${wanted}`);
      await Promise.resolve();
      give(wanted, fakeOf(wanted));
      const first = wanted - (wanted % run);
      for (let frame = first; frame < first + run && !alone; frame += 1) {
        await Promise.resolve();
        if (signal.aborted) break;
        if (frame !== wanted) give(frame, fakeOf(frame));
      }
      atWork -= 1;
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

it('keeps what was decoded on the way', async () => {
  const from = source(10);
  const cache = cachePictures(from);
  await cache.picture(19);
  expect(cache.ready(18)).toBeNull();
  await cache.later(30);
  expect(from.log).toEqual(['decode 19', 'decode 30']);
  for (let frame = 10; frame < 20; frame += 1) expect(cache.ready(frame)).not.toBeNull();
  expect(cache.ready(31)).toBeNull();
});

it('lets what is wanted now go before what can wait', async () => {
  const from = source(10);
  const cache = cachePictures(from);
  cache.ahead(5);
  cache.ahead(25);
  const small = cache.later(45);
  const shown = cache.picture(65);
  expect(await Promise.race([small.then(() => 'small'), shown.then(() => 'shown')])).toBe('shown');
  await small;
  expect(from.log).toEqual(['decode 5', 'decode 65', 'decode 25', 'decode 45']);
  // The run ahead gave way as soon as a frame was wanted.
  expect(cache.ready(0)).toBeNull();
});

it('lets the farthest go and closes what it gave away', async () => {
  const from = source();
  const cache = cachePictures(from);
  for (let frame = 0; frame < 49; frame += 1) await cache.picture(frame);
  expect(from.log).toContain('close 0');
  expect(from.log).not.toContain('close 1');
  cache.close();
  expect(from.log).toContain('close 48');
  await expect(cache.picture(99)).rejects.toThrow('closed');
});

it('keeps what comes next, however long ago it was decoded', async () => {
  const from = source(10);
  const cache = cachePictures(from);
  for (let frame = 0; frame < 100; frame += 1) {
    await cache.picture(frame);
    cache.ahead(frame + 10);
    // What is asked for in between comes after all that was asked for before.
    await cache.later(500 + frame);
  }
  expect(from.log.filter((line) => /^decode \d\d?$/.test(line))).toEqual(
    Array.from({ length: 10 }, (_, run) => `decode ${run * 10}`),
  );
});

it('answers whoever waits when it is closed', async () => {
  const cache = cachePictures(source());
  const asked = Promise.allSettled([cache.picture(1), cache.picture(2)]);
  cache.close();
  expect((await asked).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
});

it('goes on after a frame that failed', async () => {
  const from = source();
  const fails = {
    ...from,
    decode: (asked: Decoding) => (asked.wanted === 1 ? Promise.reject(new Error('bad')) : from.decode(asked)),
  };
  const cache = cachePictures(fails);
  await expect(cache.picture(1)).rejects.toThrow('bad');
  await expect(cache.picture(2)).resolves.toBeDefined();
});
