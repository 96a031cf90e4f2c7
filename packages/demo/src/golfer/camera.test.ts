import { describe, expect, it } from 'vitest';
import { focalPxOf, phoneCamera, pixelsPerMm, project, type Scene, seenAtS } from './camera.ts';
import { spot } from './space.ts';

const scene: Scene = { hand: 'right', ball: spot(0, 21, 650) };
const straight = { ...phoneCamera, asideMm: 0, focalPx: 1400, distanceMm: 3400 };

describe('the camera', () => {
  it('shows lengths in proportion to focal length over distance', () => {
    const [left] = project(straight, scene, spot(-500, 1000, 650));
    const [right, y] = project(straight, scene, spot(500, 1000, 650));
    // Pinhole: f L / D = 1400 * 1000 / 3400.
    expect(right - left).toBeCloseTo(411.765, 3);
    expect(y).toBe(640);
    expect(pixelsPerMm(straight, scene, spot(0, 0, 650))).toBeCloseTo(0.411765, 6);
  });

  it('magnifies what is nearer by D / (D - y): 1.081 at .3 m of 4 m [derived]', () => {
    const camera = { ...straight, distanceMm: 4000 };
    const near = pixelsPerMm(camera, scene, spot(0, 0, 950));
    expect(near / pixelsPerMm(camera, scene, spot(0, 0, 650))).toBeCloseTo(1.081, 3);
  });

  it('yaw moves a deeper place sideways by its depth times sin: 5.2 cm for .3 m at 10 degrees [derived]', () => {
    const camera = { ...straight, yawDeg: 10 };
    const deep = spot(0, 1000, 350);
    const [x] = project(camera, scene, deep);
    const sideways = (x - 360) / pixelsPerMm(camera, scene, deep);
    expect(Math.abs(sideways)).toBeCloseTo(52.1, 1);
  });

  it('a field of 90 degrees has a focal length of half the side', () => {
    expect(focalPxOf(90, 1280)).toBeCloseTo(640, 9);
  });

  it('roll turns the picture about its middle, a bent lens moves places along their radius', () => {
    const at = spot(300, 1000, 650);
    const [x] = project(straight, scene, at);
    const [rx, ry] = project({ ...straight, rollDeg: 90 }, scene, at);
    expect(rx).toBeCloseTo(360, 6);
    expect(ry - 640).toBeCloseTo(x - 360, 6);
    const slope = 300 / 3400;
    const [bx] = project({ ...straight, k1: 0.02 }, scene, at);
    expect(bx - 360).toBeCloseTo((x - 360) * (1 + 0.02 * slope ** 2), 6);
  });

  it('from behind, away from the player is right and the target is far', () => {
    const camera = { ...straight, view: 'down-the-line' as const };
    const [ball] = project(camera, scene, scene.ball);
    const [hip] = project(camera, scene, spot(0, 950, -60));
    expect(ball).toBeCloseTo(360, 6);
    expect(hip).toBeLessThan(ball);
    expect(pixelsPerMm(camera, scene, spot(500, 0, 650))).toBeLessThan(
      pixelsPerMm(camera, scene, scene.ball),
    );
  });

  it('mirrors a left-hander', () => {
    const [x, y] = project(straight, scene, spot(120, 900, 400));
    const [lx, ly] = project(straight, { ...scene, hand: 'left' }, spot(120, 900, 400));
    expect(lx).toBeCloseTo(720 - x, 9);
    expect(ly).toBe(y);
  });

  it('reads a falling place later the lower it is', () => {
    const camera = { ...straight, readoutS: 0.02 };
    const fall = (timeS: number) => spot(0, 1000 - 3000 * timeS, 650);
    // Row of the place: 640 + 1400 / 3400 * 3000 t; read at t = .02 (row / 1280 - .5), so t is 0 only at the middle.
    const t = seenAtS(camera, scene, fall, 0.1);
    const row = project(camera, scene, fall(t))[1];
    expect(t).toBeCloseTo(0.1 + 0.02 * (row / 1280 - 0.5), 7);
    expect(seenAtS(camera, scene, () => spot(0, 1000, 650), 0.1)).toBeCloseTo(0.1, 9);
  });

  it('refuses what lies behind the lens', () => {
    expect(() => project(straight, scene, spot(0, 0, 4100))).toThrow(RangeError);
  });
});
