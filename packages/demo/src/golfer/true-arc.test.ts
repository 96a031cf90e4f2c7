import { describe, expect, it } from 'vitest';
import { headMarks } from './arc-marks.ts';
import { drawShot } from './draw-swing.ts';
import { makeSwing } from './swing.ts';
import { trueArc } from './true-arc.ts';

const sin = (deg: number) => Math.sin((deg * Math.PI) / 180);

describe('the arc of a golfer', () => {
  const swing = makeSwing('none', 'right');
  const arc = trueArc(swing);

  it('has the radius and low point of an iron (R 1.1-1.5 m; attack -4.5 +/- 1.5 degrees; common practice)', () => {
    expect(arc.radiusMm).toBeGreaterThan(1100);
    expect(arc.radiusMm).toBeLessThan(1500);
    expect(arc.attackDeg).toBeGreaterThan(-6);
    expect(arc.attackDeg).toBeLessThan(-3);
  });

  it('agrees with the circle L = R sin|a| / sin g from where the face meets the ball [derived; a pendulum is no circle]', () => {
    const circle = (arc.radiusMm * sin(-arc.attackDeg)) / sin(swing.shape.planeDeg);
    expect(arc.lowPointAheadMm - -25).toBeGreaterThan(circle - 15);
    expect(arc.lowPointAheadMm - -25).toBeLessThan(circle + 15);
  });

  it('is one ball high one grip length behind the ball (44.4 mm at -4.5 degrees, 9 mm either way) [derived]', () => {
    expect(arc.heightOneGripLengthBehindMm).toBeGreaterThan(44.4 - 9);
    expect(arc.heightOneGripLengthBehindMm).toBeLessThan(44.4 + 9);
  });

  it('path minus direction is near -a / tan g (2.398 degrees at -4.5 and 62) [derived]', () => {
    const expected = -arc.attackDeg / Math.tan((swing.shape.planeDeg * Math.PI) / 180);
    expect(arc.pathDeg).toBeCloseTo(expected, 1);
  });

  it('a plane turned to the left turns the path with it: path = direction - a / tan g [derived]', () => {
    const turned = trueArc(makeSwing('none', 'right', { swingDirectionDeg: -8 }));
    const tan = Math.tan((swing.shape.planeDeg * Math.PI) / 180);
    expect(turned.pathDeg).toBeCloseTo(-8 - turned.attackDeg / tan, 1);
  });

  it('turf throws the club up, but not the arc that is told', () => {
    const kinked = makeSwing('none', 'right', { turfKinkRad: 0.02 });
    expect(trueArc(kinked)).toEqual(arc);
    const after = swing.timing.impact + 0.006;
    const lift = kinked.clubAt(after).head.y - swing.clubAt(after).head.y;
    expect(lift).toBeCloseTo(0.02 * swing.clubAt(after).head.x, 3);
  });

  it('marks of the clubhead lie on the frames around impact, without noise where the clubhead is', () => {
    const shot = drawShot(9, { view: 'face-on', fps: 240, camera: { readoutS: 0, exposureS: 1 / 4000 } });
    const marks = headMarks(shot, 1, 700, 0);
    expect(marks.length).toBeGreaterThanOrEqual(6);
    const atImpact = marks.find(({ frame }) => frame === shot.truth.positions.impact);
    const [x, y] = shot.truth.points.impact.clubhead;
    expect(atImpact?.x).toBeCloseTo(x, 1);
    expect(atImpact?.y).toBeCloseTo(y, 1);
  });
});
