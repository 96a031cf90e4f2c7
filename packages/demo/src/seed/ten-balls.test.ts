import { describe, expect, it } from 'vitest';
import { sharesOver } from './course.ts';
import { drawOf } from './draw.ts';
import { badDay, tenBalls } from './ten-balls.ts';

describe('balls of the demo', () => {
  it('are as noisy as ten draws are: mean and spread of a binomial', () => {
    const draw = drawOf('noise');
    const fats = Array.from({ length: 4000 }, () => tenBalls(draw, { fat: 0.35 }).fat);
    const mean = fats.reduce((sum, it) => sum + it, 0) / fats.length;
    const variance = fats.reduce((sum, it) => sum + (it - mean) ** 2, 0) / fats.length;
    // n p = 3.5 and n p (1 - p) = 2.275 (the binomial distribution); four standard errors either side.
    expect(mean).toBeGreaterThan(3.4);
    expect(mean).toBeLessThan(3.6);
    expect(variance).toBeGreaterThan(2.07);
    expect(variance).toBeLessThan(2.48);
  });

  it('fall back towards the mean by themselves after a bad day', () => {
    const draw = drawOf('regression');
    let [first, second] = [0, 0];
    for (let golfer = 0; golfer < 400; golfer += 1) {
      const [then = {}, now = {}] = sharesOver(draw, { miss: 'fat', course: 'plateau', swings: 2 });
      expect(now).toEqual(then);
      first += badDay(draw, then, 'fat').fat / 400;
      second += tenBalls(draw, now).fat / 400;
    }
    expect(first - second).toBeGreaterThan(0.7);
  });

  it('name no more than ten, whatever the shares', () => {
    const draw = drawOf('sum');
    for (let set = 0; set < 200; set += 1) {
      const { balls, counted: _, ...named } = tenBalls(draw, { fat: 0.6, thin: 0.4, topped: 0.3 });
      expect(Object.values(named).reduce((sum, it) => sum + it, 0)).toBe(balls);
    }
  });
});
