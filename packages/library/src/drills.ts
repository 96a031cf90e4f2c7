import { ballFence } from './drills/ball-fence.ts';
import { ballPositionTape } from './drills/ball-position-tape.ts';
import { clubAcrossShoulders } from './drills/club-across-shoulders.ts';
import { countedRhythm } from './drills/counted-rhythm.ts';
import { coverInside } from './drills/cover-inside.ts';
import { coverOutside } from './drills/cover-outside.ts';
import { cushionAtHip } from './drills/cushion-at-hip.ts';
import { cushionPress } from './drills/cushion-press.ts';
import { faceStrikeSpots } from './drills/face-strike-spots.ts';
import { feetTogether } from './drills/feet-together.ts';
import { flatTowel } from './drills/flat-towel.ts';
import { flatWristSet } from './drills/flat-wrist-set.ts';
import { forwardTee } from './drills/forward-tee.ts';
import { gripLadder } from './drills/grip-ladder.ts';
import { headMark } from './drills/head-mark.ts';
import { leadFootDownhill } from './drills/lead-foot-downhill.ts';
import { leadSideStart } from './drills/lead-side-start.ts';
import { lineBrush } from './drills/line-brush.ts';
import { lowPunch } from './drills/low-punch.ts';
import { oneArmSwings } from './drills/one-arm-swings.ts';
import { ownFaultOnPurpose } from './drills/own-fault-on-purpose.ts';
import { paperStrip } from './drills/paper-strip.ts';
import { pastTheStick } from './drills/past-the-stick.ts';
import { pauseAtTop } from './drills/pause-at-top.ts';
import { posturePlumb } from './drills/posture-plumb.ts';
import { pump } from './drills/pump.ts';
import { seatTouch } from './drills/seat-touch.ts';
import { setUpPhoto } from './drills/set-up-photo.ts';
import { softBlockBeyondBall } from './drills/soft-block-beyond-ball.ts';
import { softHands } from './drills/soft-hands.ts';
import { splitHands } from './drills/split-hands.ts';
import { stepThrough } from './drills/step-through.ts';
import { strikeMap } from './drills/strike-map.ts';
import { teeLadder } from './drills/tee-ladder.ts';
import { toeUpStops } from './drills/toe-up-stops.ts';
import { towelUnderArms } from './drills/towel-under-arms.ts';
import { trailFootOut } from './drills/trail-foot-out.ts';
import { twoRails } from './drills/two-rails.ts';
import { waistHighSwings } from './drills/waist-high-swings.ts';
import type { Drill } from './types.ts';

/** Every built-in drill. */
export const drills: readonly Drill[] = [
  lineBrush,
  leadSideStart,
  flatTowel,
  setUpPhoto,
  ballFence,
  pastTheStick,
  forwardTee,
  stepThrough,
  feetTogether,
  cushionAtHip,
  seatTouch,
  headMark,
  pump,
  lowPunch,
  cushionPress,
  paperStrip,
  waistHighSwings,
  coverOutside,
  coverInside,
  splitHands,
  toeUpStops,
  gripLadder,
  flatWristSet,
  ballPositionTape,
  twoRails,
  posturePlumb,
  softBlockBeyondBall,
  faceStrikeSpots,
  countedRhythm,
  pauseAtTop,
  ownFaultOnPurpose,
  oneArmSwings,
  towelUnderArms,
  leadFootDownhill,
  clubAcrossShoulders,
  trailFootOut,
  softHands,
  strikeMap,
  teeLadder,
];

// A programme that was given under a drill's former name is still read.
const formerNames: Readonly<Record<string, string>> = { 'past-the-line': 'past-the-stick' };

const byId = new Map(drills.map((drill) => [drill.id, drill]));

/** @throws RangeError on an unknown drill */
export const drillById = (id: string): Drill => {
  const found = byId.get(formerNames[id] ?? id);
  if (found === undefined) throw new RangeError(`No drill is called "${id}".`);
  return found;
};
