import { createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import type { Camera } from './camera.ts';
import { keyedCurve } from './keyed-curve.ts';
import type { Look } from './look.ts';
import { paintArm, paintHand, paintLeg, paintTrunk } from './paint-body.ts';
import { paintClub } from './paint-club.ts';
import { paintHead } from './paint-head.ts';
import { type Lens, lensOf, seenPose } from './paint-lens.ts';
import { paintRange } from './paint-range.ts';
import { fillOval } from './paint-shapes.ts';
import { between, plus, type Spot, spot } from './space.ts';
import { ballInFlight, type Pose, type Swing } from './swing.ts';

/** Paints the frames of one swing; the range behind is drawn once. Returns raw RGBA of `widthPx` by `heightPx`. */
export function framePainter(swing: Swing, camera: Camera, look: Look): (timeS: number) => Buffer {
  const lens = lensOf(swing, camera);
  const range = createCanvas(camera.widthPx, camera.heightPx);
  paintRange(range.getContext('2d'), camera, lens, swing);
  const canvas = createCanvas(camera.widthPx, camera.heightPx);
  const pen = canvas.getContext('2d');
  // The player looks at the ball until it is gone, then follows it to the target.
  const lookDeg = keyedCurve([
    [swing.timing.impact, 0],
    [swing.timing.impact + 0.1, 12],
    [swing.timing.finish, 82],
  ]);
  return (timeS) => {
    pen.drawImage(range, 0, 0);
    paintGolfer(pen, lens, swing, camera, look, timeS, lookDeg(timeS));
    return canvas.data();
  };
}

function paintGolfer(
  pen: SKRSContext2D,
  lens: Lens,
  swing: Swing,
  camera: Camera,
  look: Look,
  timeS: number,
  lookDeg: number,
): void {
  const pose = seenPose(swing, camera, timeS);
  const near = lens.nearness;
  const armAt = (arm: { elbow: Spot; wrist: Spot }) => near(between(arm.elbow, arm.wrist, 0.4));
  const clubAt = near(between(pose.club.gripEnd, pose.club.head, 0.25)) - 40;
  const trunkAt =
    near(between(pose.trunk.hipMiddle, pose.trunk.shoulderMiddle, 0.6)) + (lens.faceOn ? 60 : 0);
  const legAt = (leg: { knee: Spot }) => near(leg.knee) - (lens.faceOn ? 400 : 150);
  paintShadow(pen, lens, pose);
  const parts = [
    { depth: legAt(pose.trailLeg), paint: () => paintLeg(pen, lens, pose.trailLeg, look) },
    { depth: legAt(pose.leadLeg), paint: () => paintLeg(pen, lens, pose.leadLeg, look) },
    { depth: trunkAt, paint: () => paintTrunk(pen, lens, pose, look) },
    {
      depth: lens.faceOn ? near(pose.trunk.headCentre) - 30 : trunkAt + 5,
      paint: () => paintHead(pen, lens, pose, look, lookDeg, swing.hand === 'left' ? -1 : 1),
    },
    { depth: armAt(pose.trailArm), paint: () => paintArm(pen, lens, pose.trailArm, look) },
    { depth: armAt(pose.leadArm), paint: () => paintArm(pen, lens, pose.leadArm, look) },
    { depth: clubAt, paint: () => paintClub(pen, lens, swing, camera, timeS) },
    { depth: clubAt + 1, paint: () => paintHand(pen, lens, pose.leadArm, '#f3f2ee', '#cfcdc6') },
    { depth: clubAt + 2, paint: () => paintHand(pen, lens, pose.trailArm, look.skin, look.skinShade) },
  ];
  const flownS = Math.max(0, timeS - swing.timing.impact);
  const ball = ballInFlight(swing.stance.ball, flownS);
  // From the side it is gone in three frames, from behind it goes on into the distance.
  const gone = flownS > (lens.faceOn ? 0.04 : 0.5);
  const depth = flownS === 0 ? Number.NEGATIVE_INFINITY : near(ball);
  const all = gone ? parts : [...parts, { depth, paint: () => paintBall(pen, lens, ball) }];
  for (const part of all.toSorted((a, b) => a.depth - b.depth)) part.paint();
}

function paintShadow(pen: SKRSContext2D, lens: Lens, pose: Pose): void {
  for (const leg of [pose.leadLeg, pose.trailLeg]) {
    const at = spot(leg.heel.x, 0, 70);
    const [wide, flat] = lens.faceOn ? [120, 34] : [190, 30];
    fillOval(pen, lens.pixel(at), wide * lens.scale(at), flat * lens.scale(at), 'rgba(15,30,20,0.25)');
  }
  const under = spot(pose.trunk.hipMiddle.x - 60, 0, -60);
  fillOval(pen, lens.pixel(under), 380 * lens.scale(under), 46 * lens.scale(under), 'rgba(15,30,20,0.18)');
}

function paintBall(pen: SKRSContext2D, lens: Lens, ball: Spot): void {
  const scale = lens.scale(ball);
  if (ball.y < 30)
    fillOval(pen, lens.pixel(plus(ball, spot(-6, -20, 0))), 26 * scale, 8 * scale, 'rgba(10,25,15,0.35)');
  const [x, y] = lens.pixel(ball);
  fillOval(pen, [x, y], 21.3 * scale, 21.3 * scale, '#d9d9d4');
  fillOval(pen, [x + 0.6, y - 0.6], 17 * scale, 17 * scale, '#fbfbf8');
}
