import { createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import { type Camera, pixelsPerMm, project } from './camera.ts';
import { keyedCurve } from './keyed-curve.ts';
import type { Look } from './look.ts';
import { type Lens, paintArm, paintHand, paintHead, paintLeg, paintTrunk } from './paint-body.ts';
import { paintClub } from './paint-club.ts';
import { paintRange } from './paint-range.ts';
import { fillOval } from './paint-shapes.ts';
import { between, lengthOf, minus, plus, type Spot, spot } from './space.ts';
import type { Pose, Swing } from './swing.ts';
import { timing } from './timing.ts';

const shutterS = 1 / 1000;
const smearSteps = 6;

/** Paints the frames of one swing; the range behind is drawn once. Returns raw RGBA of `widthPx` by `heightPx`. */
export function framePainter(swing: Swing, camera: Camera, look: Look): (timeS: number) => Buffer {
  const range = createCanvas(camera.widthPx, camera.heightPx);
  paintRange(range.getContext('2d'), camera, swing.hand);
  const canvas = createCanvas(camera.widthPx, camera.heightPx);
  const pen = canvas.getContext('2d');
  const lens: Lens = {
    pixel: (at) => project(camera, swing.hand, at),
    scale: (at) => pixelsPerMm(camera, at),
  };
  return (timeS) => {
    pen.drawImage(range, 0, 0);
    paintGolfer(pen, lens, swing, look, timeS);
    return canvas.data();
  };
}

function paintGolfer(pen: SKRSContext2D, lens: Lens, swing: Swing, look: Look, timeS: number): void {
  const pose = swing.poseAt(timeS);
  paintShadow(pen, lens, pose);
  const parts = [
    { depth: pose.trailLeg.knee.z - 400, paint: () => paintLeg(pen, lens, pose.trailLeg, look) },
    { depth: pose.leadLeg.knee.z - 400, paint: () => paintLeg(pen, lens, pose.leadLeg, look) },
    { depth: 60, paint: () => paintTrunk(pen, lens, pose, look) },
    {
      depth: pose.trunk.headCentre.z - 30,
      paint: () => paintHead(pen, lens, pose, look, lookDeg(timeS), swing.hand === 'left' ? -1 : 1),
    },
    { depth: armDepth(pose.trailArm), paint: () => paintArm(pen, lens, pose.trailArm, look) },
    { depth: armDepth(pose.leadArm), paint: () => paintArm(pen, lens, pose.leadArm, look) },
    { depth: clubDepth(pose), paint: () => paintClubInMotion(pen, lens, swing, timeS) },
    { depth: clubDepth(pose) + 1, paint: () => paintHand(pen, lens, pose.leadArm, '#f3f2ee', '#cfcdc6') },
    {
      depth: clubDepth(pose) + 2,
      paint: () => paintHand(pen, lens, pose.trailArm, look.skin, look.skinShade),
    },
  ];
  for (const part of parts.toSorted((a, b) => a.depth - b.depth)) part.paint();
  paintBall(pen, lens, pose.ball);
}

const armDepth = (arm: { elbow: Spot; wrist: Spot }) => between(arm.elbow, arm.wrist, 0.4).z;
const clubDepth = (pose: Pose) => between(pose.club.gripEnd, pose.club.head, 0.25).z - 40;

/** The player looks at the ball until it is gone, then follows it to the target. */
const lookDeg = keyedCurve([
  [timing.impact, 0],
  [timing.impact + 0.1, 12],
  [timing.finish, 82],
]);

/** The club as the open shutter sees it: several faint clubs where it moves, one where it is still. */
function paintClubInMotion(pen: SKRSContext2D, lens: Lens, swing: Swing, timeS: number): void {
  const early = swing.poseAt(timeS - shutterS / 2).club;
  const late = swing.poseAt(timeS + shutterS / 2).club;
  if (lengthOf(minus(late.head, early.head)) < 6) {
    paintClub(pen, lens, swing.poseAt(timeS).club);
    return;
  }
  for (let step = 0; step < smearSteps; step += 1) {
    const at = timeS + shutterS * ((step + 0.5) / smearSteps - 0.5);
    pen.globalAlpha = 0.36;
    paintClub(pen, lens, swing.poseAt(at).club);
  }
  pen.globalAlpha = 1;
}

function paintShadow(pen: SKRSContext2D, lens: Lens, pose: Pose): void {
  for (const leg of [pose.leadLeg, pose.trailLeg]) {
    const at = spot(leg.heel.x, 0, 70);
    fillOval(pen, lens.pixel(at), 120 * lens.scale(at), 34 * lens.scale(at), 'rgba(15,30,20,0.25)');
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
  fillOval(pen, [x + 1, y - 1], 17 * scale, 17 * scale, '#fbfbf8');
}
