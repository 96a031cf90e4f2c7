import { describe, expect, it } from 'vitest';
import { bendJoint } from './bend-joint.ts';
import { phoneCamera, project } from './camera.ts';
import { frameOfMoments, moments } from './moments.ts';
import { lengthOf, minus, spot } from './space.ts';
import { makeSwing } from './swing.ts';
import { type GolferCause, golferCauses } from './swing-shape.ts';
import { truthOf } from './truth.ts';

const fps = 120;
const truth = (cause: GolferCause, hand: 'right' | 'left' = 'right') =>
  truthOf(makeSwing(cause, hand), phoneCamera, fps, `${cause}.mp4`);
const lengths = (cause: GolferCause) => truth(cause).trueMm;

describe('the invented golfer', () => {
  it.each(golferCauses)('%s: goes through the moments in their order', (cause) => {
    const frames = frameOfMoments(makeSwing(cause, 'right'), fps);
    const inOrder = moments.map((moment) => frames[moment]);
    expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
    expect(new Set(inOrder).size).toBe(moments.length);
  });

  it.each(golferCauses)('%s: meets the ball with the clubhead at the speed of a club player', (cause) => {
    const { poseAt } = makeSwing(cause, 'right');
    const impactS = frameOfMoments(makeSwing(cause, 'right'), fps).impact / fps;
    const before = poseAt(impactS - 0.001).club.head;
    const after = poseAt(impactS + 0.001).club.head;
    expect(poseAt(impactS).club.head.x).toBeCloseTo(-33, 3);
    // Club amateurs swing an 8-iron at 65 to 78 mph, 29 to 35 m/s [common practice, no source]; stronger players swing faster.
    const speed = lengthOf(minus(after, before)) / 2;
    expect(speed).toBeGreaterThan(28);
    expect(speed).toBeLessThan(45);
  });

  it('a left-hander is the mirror image of a right-hander', () => {
    const right = truth('sway-away').points;
    const left = truth('sway-away', 'left').points;
    for (const moment of moments) {
      const [x, y] = right[moment]['hip-middle'];
      expect(left[moment]['hip-middle'][0]).toBeCloseTo(phoneCamera.widthPx - x, 1);
      expect(left[moment]['hip-middle'][1]).toBeCloseTo(y, 1);
    }
  });

  // The ranges below are common practice without a source; the demo only has to be clear about which side it is on.
  it('a sound swing lies inside the common ranges', () => {
    const sound = lengths('none');
    expect(sound.handleAheadOfLeadThighInsideMm).toBeGreaterThan(-30);
    expect(sound.handleAheadOfLeadThighInsideMm).toBeLessThan(30);
    expect(sound.hipMiddleAlongAnkleLinePercent).toBeGreaterThan(50);
    expect(sound.hipMiddleAlongAnkleLinePercent).toBeLessThan(58);
    expect(sound.ballInsideLeadHeelMm).toBeGreaterThan(80);
    expect(sound.ballInsideLeadHeelMm).toBeLessThan(130);
    expect(sound.hipShiftAddressToTopMm).toBeGreaterThan(-30);
    expect(sound.hipShiftTopToLeadArmParallelDownMm).toBeGreaterThan(30);
    expect(sound.gripEndToBallLineAtShaftParallelDownMm).toBeGreaterThan(-100);
    expect(sound.hipMiddlePastBallAtFinishMm).toBeGreaterThan(50);
    expect(sound.lowPointAheadMm).toBeGreaterThan(20);
  });

  it('each cause departs in its own measurement and brings the low point behind the ball', () => {
    expect(lengths('handle-back').handleAheadOfLeadThighInsideMm).toBeLessThan(-60);
    expect(lengths('hips-back-at-address').hipMiddleAlongAnkleLinePercent).toBeLessThan(44);
    expect(lengths('sway-away').hipShiftAddressToTopMm).toBeLessThan(-70);
    expect(lengths('hang-back').hipShiftTopToLeadArmParallelDownMm).toBeLessThan(15);
    expect(lengths('hang-back').hipMiddlePastBallAtFinishMm).toBeLessThan(0);
    expect(lengths('thrown-early').gripEndToBallLineAtShaftParallelDownMm).toBeLessThan(-180);
    for (const cause of golferCauses.filter((name) => name !== 'none')) {
      expect(lengths(cause).lowPointAheadMm).toBeLessThan(0);
    }
  });

  it('keeps every mark of the first pass inside the picture', () => {
    for (const cause of golferCauses) {
      const { points, width, height } = truth(cause);
      for (const moment of [
        'address',
        'top',
        'lead-arm-parallel-down',
        'shaft-parallel-down',
        'finish',
      ] as const) {
        for (const point of ['hip-middle', 'head-centre', 'grip-end', 'lead-ankle', 'trail-ankle'] as const) {
          const [x, y] = points[moment][point];
          expect(x > 0 && x < width && y > 0 && y < height, `${cause} ${moment} ${point}`).toBe(true);
        }
      }
    }
  });
});

describe('project', () => {
  it('shows lengths in proportion to focal length over distance', () => {
    const camera = { ...phoneCamera, asideMm: 0 };
    const [left] = project(camera, 'right', spot(-500, 1000, 600));
    const [right, y] = project(camera, 'right', spot(500, 1000, 600));
    // Pinhole: f L / D = 1400 * 1000 / (4000 - 600).
    expect(right - left).toBeCloseTo(411.765, 3);
    expect(y).toBe(640);
  });

  it('refuses what lies behind the lens', () => {
    expect(() => project(phoneCamera, 'right', spot(0, 0, 4100))).toThrow(RangeError);
  });
});

describe('bendJoint', () => {
  it('keeps both bones at their lengths (3-4-5 triangle)', () => {
    const knee = bendJoint(spot(0, 0, 0), spot(0, -5, 0), 3, 4, spot(0, 0, 1));
    expect(knee.z).toBeCloseTo(2.4, 9);
    expect(knee.y).toBeCloseTo(-1.8, 9);
  });
});
