import { expect, it } from 'vitest';
import { type StageActs, stageKey } from './stage-keys.ts';

/** Notes what was asked for: "step 10", "move 0 -1". */
const acts = (aiming = false) => {
  const log: string[] = [];
  const note = new Proxy({} as Record<string, unknown>, {
    get: (_, name) =>
      name === 'aiming'
        ? aiming
        : (...given: unknown[]) => {
            log.push([String(name), ...given].join(' '));
            return aiming;
          },
  });
  return { log, act: note as StageActs };
};
const press = (key: string, given: { shiftKey?: boolean; altKey?: boolean; aiming?: boolean } = {}) => {
  const { log, act } = acts(given.aiming);
  const ours = stageKey({ key, shiftKey: false, altKey: false, repeat: false, ...given }, act);
  return [ours, ...log];
};

it('steps by arrows, with Shift ten, to the ends and from moment to moment', () => {
  expect(press('ArrowRight')).toEqual([true, 'step 1']);
  expect(press('ArrowLeft', { shiftKey: true })).toEqual([true, 'step -10']);
  expect(press('End')).toEqual([true, 'ends last']);
  expect(press('[')).toEqual([true, 'moment -1']);
  // The page may scroll.
  expect(press('ArrowDown')).toEqual([false]);
});

it('moves what is aimed at by one pixel or ten, and still steps by comma and point', () => {
  expect(press('ArrowDown', { aiming: true })).toEqual([true, 'move 0 1']);
  expect(press('ArrowRight', { aiming: true, shiftKey: true })).toEqual([true, 'move 10 0']);
  expect(press('.', { aiming: true })).toEqual([true, 'step 1']);
  expect(press('ArrowUp', { altKey: true })).toEqual([true, 'nudge 0 -1']);
});

it('leaves Enter and Escape to others when nothing is aimed at', () => {
  expect(press('Enter')[0]).toBe(false);
  expect(press('Enter', { aiming: true })).toEqual([true, 'place']);
  expect(press('Escape')[0]).toBe(false);
  expect(press('1')).toEqual([false]);
});

it('goes to the strike that was heard', () => {
  expect(press('s')).toEqual([true, 'strike']);
});

it('puts the film about the cause into the reply', () => {
  expect(press('c')).toEqual([true, 'film']);
});
