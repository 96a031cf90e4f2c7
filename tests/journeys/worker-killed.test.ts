import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { afterAll, describe, expect, inject, it, vi } from 'vitest';
import { lessonByHttp } from './lesson-by-http.ts';
import { moveClock } from './service.ts';
import { killWorker, workerOf } from './worker-of.ts';

const after = (ms: number) => new Promise((later) => setTimeout(later, ms));

/** The same lesson twice: once undisturbed, once with the worker ended at a random moment of every leg. */
describe('a worker that is killed at random', () => {
  const service = inject('service');
  const run = Date.now().toString(36);
  afterAll(() => moveClock(service.home, 0));

  it('leaves behind what an undisturbed one does, and nothing twice', async () => {
    const calm = lessonByHttp(service, `Calm Lesson ${run}`);
    for (const leg of calm.legs) await leg.run();
    const expected = await calm.endState();
    expect(expected.letters.length).toBeGreaterThanOrEqual(3);
    await moveClock(service.home, 0);

    const seed = Number(process.env.KILL_SEED ?? Date.now() % 2 ** 31);
    // Moments by a seed, so that a run that fails can be run again.
    const random = seededRandom(seed);
    const rough = lessonByHttp(service, `Rough Lesson ${run}`);
    let kills = 0;
    for (const leg of rough.legs) {
      const [, killed] = await Promise.all([
        leg.run(),
        after(random() * 2000).then(() => killWorker(service.home)),
      ]);
      if (killed) kills += 1;
    }
    // A job whose worker died is taken up again when its lock has run out.
    await vi.waitFor(async () => expect(await rough.endState(), `KILL_SEED=${seed}`).toEqual(expected), {
      timeout: 120_000,
      interval: 2000,
    });
    expect(kills, `KILL_SEED=${seed}`).toBeGreaterThanOrEqual(3);
    await vi.waitFor(async () => expect(await workerOf(service.home)).toBeDefined(), { timeout: 60_000 });
  }, 600_000);
});
