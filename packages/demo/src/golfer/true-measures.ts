import type { View } from './camera.ts';
import type { Moment } from './moments.ts';
import { type GolferPoint, spotsOf } from './points.ts';
import { minus, type Spot, unitOf } from './space.ts';
import type { Swing } from './swing.ts';

export type Measures = Readonly<Record<string, number>>;
type At = (moment: Moment, point: GolferPoint) => Spot;

const degrees = 180 / Math.PI;

/**
 * True measurements of a swing by name, in mm, degrees and percent, without lens or marks. Along the line + is towards
 * the target, up is +; down-the-line + is away from the player, towards and past the ball.
 *
 * @param times when each moment is read: its own instant, or that of the frame that shows it
 */
export function trueMeasures(swing: Swing, view: View, times: Readonly<Record<Moment, number>>): Measures {
  const kept = new Map<Moment, Record<GolferPoint, Spot>>();
  const at: At = (moment, point) => {
    const spots = kept.get(moment) ?? spotsOf(swing.poseAt(times[moment]));
    kept.set(moment, spots);
    return spots[point];
  };
  return view === 'face-on' ? { ...faceOn(at), 'tempo-ratio': tempo(times) } : downTheLine(at);
}

const tempo = (times: Readonly<Record<Moment, number>>) =>
  (times.top - times.address) / (times.impact - times.top);

/** Lean of a line from the vertical as seen face-on, + towards the target. */
const leanDeg = (top: Spot, foot: Spot) => Math.atan2(top.x - foot.x, top.y - foot.y) * degrees;

/** Angle between two directions in space, degrees. */
function cornerDeg(a: Spot, b: Spot): number {
  const [u, v] = [unitOf(a), unitOf(b)];
  return Math.acos(Math.max(-1, Math.min(1, u.x * v.x + u.y * v.y + u.z * v.z))) * degrees;
}

const bodyParts = [
  ['hip', 'hip-middle'],
  ['neck-base', 'neck-base'],
  ['head', 'head-centre'],
] as const;
const ways = [
  { name: 'address-top', from: 'address', to: 'top' },
  { name: 'top-lead-arm-down', from: 'top', to: 'lead-arm-parallel-down' },
  { name: 'address-impact', from: 'address', to: 'impact' },
] as const;

function faceOn(at: At): Record<string, number> {
  // The ball lies where it lay at address, whatever the moment.
  const ball = at('address', 'ball');
  const x = (moment: Moment, point: GolferPoint) => at(moment, point).x;
  const shift = (point: GolferPoint, from: Moment, to: Moment) => x(to, point) - x(from, point);
  const rise = (point: GolferPoint, from: Moment, to: Moment) => at(to, point).y - at(from, point).y;
  const ankles = x('address', 'lead-ankle') - x('address', 'trail-ankle');
  const percent = (mm: number) => (100 * mm) / ankles;
  const moved = Object.fromEntries(
    ways.flatMap(({ name, from, to }) =>
      bodyParts.flatMap(([part, point]) => {
        const mm = shift(point, from, to);
        return [
          [`${part}-shift-${name}`, mm],
          [`${part}-shift-${name}-percent`, percent(mm)],
          [`${part}-height-${name}`, rise(point, from, to)],
        ];
      }),
    ),
  );
  return {
    ...moved,
    'stance-width': x('address', 'lead-heel') - x('address', 'trail-heel'),
    'ankle-distance': ankles,
    'hip-middle-along-ankles': percent(x('address', 'hip-middle') - x('address', 'trail-ankle')),
    'hip-middle-behind-ball': ball.x - x('address', 'hip-middle'),
    'head-behind-ball': ball.x - x('address', 'head-centre'),
    'neck-base-behind-ball': ball.x - x('address', 'neck-base'),
    'handle-ahead-of-ball': x('address', 'grip-end') - ball.x,
    'handle-ahead-of-hip-middle': x('address', 'grip-end') - x('address', 'hip-middle'),
    'handle-ahead-of-lead-thigh': x('address', 'grip-end') - x('address', 'lead-thigh-inside'),
    'ball-inside-lead-heel': x('address', 'lead-heel') - ball.x,
    'shaft-lean-at-address': leanDeg(at('address', 'grip-end'), at('address', 'clubhead')),
    'trunk-lean-at-address': leanDeg(at('address', 'neck-base'), at('address', 'hip-middle')),
    'head-ahead-of-hip-middle-at-top': x('top', 'head-centre') - x('top', 'hip-middle'),
    'trunk-lean-at-top': leanDeg(at('top', 'neck-base'), at('top', 'hip-middle')),
    'grip-end-to-ball-line-at-shaft-parallel-down': x('shaft-parallel-down', 'grip-end') - ball.x,
    'handle-ahead-of-ball-at-impact': x('impact', 'grip-end') - ball.x,
    'shaft-lean-at-impact': leanDeg(at('impact', 'grip-end'), at('impact', 'clubhead')),
    'forearm-shaft-angle-at-lead-arm-down': cornerDeg(
      minus(at('lead-arm-parallel-down', 'lead-elbow'), at('lead-arm-parallel-down', 'lead-wrist')),
      minus(at('lead-arm-parallel-down', 'clubhead'), at('lead-arm-parallel-down', 'grip-end')),
    ),
    'lead-elbow-after-impact': cornerDeg(
      minus(at('shaft-parallel-through', 'lead-elbow'), at('shaft-parallel-through', 'lead-shoulder')),
      minus(at('shaft-parallel-through', 'lead-wrist'), at('shaft-parallel-through', 'lead-elbow')),
    ),
    'trail-heel-lift-at-impact': rise('trail-heel', 'address', 'impact'),
    'hip-past-ball-at-finish': x('finish', 'hip-middle') - ball.x,
    'hip-over-lead-ankle-at-finish': x('finish', 'hip-middle') - x('address', 'lead-ankle'),
  };
}

/** Slope of the club to the ground as seen along the line, degrees. */
function slopeDeg(one: Spot, other: Spot): number {
  const [low, high] = one.y < other.y ? [one, other] : [other, one];
  return Math.atan2(high.y - low.y, low.z - high.z) * degrees;
}

const bendDeg = (neck: Spot, hip: Spot) => Math.atan2(neck.z - hip.z, neck.y - hip.y) * degrees;

function downTheLine(at: At): Record<string, number> {
  const z = (moment: Moment, point: GolferPoint) => at(moment, point).z;
  const gain = (point: GolferPoint) => z('impact', point) - z('address', point);
  const rise = (point: GolferPoint) => at('impact', point).y - at('address', point).y;
  const shaft = (moment: Moment) => slopeDeg(at(moment, 'grip-end'), at(moment, 'clubhead'));
  const bend = (moment: Moment) => bendDeg(at(moment, 'neck-base'), at(moment, 'hip-middle'));
  const outside = (moment: Moment) => z(moment, 'clubhead') - z(moment, 'hands');
  const foot = at('address', 'clubhead');
  const hands = at('lead-arm-parallel-down', 'hands');
  const line = shaft('address') / degrees;
  return {
    'trunk-bend-at-address': bend('address'),
    'loss-of-trunk-bend-address-impact': bend('address') - bend('impact'),
    'hands-to-thighs-at-address': z('address', 'hands') - z('address', 'thigh-front'),
    'hands-ahead-of-toe-line': z('address', 'hands') - z('address', 'toe-line'),
    'ball-ahead-of-toe-line': z('address', 'ball') - z('address', 'toe-line'),
    'seat-toward-ball-address-impact': gain('seat-line'),
    'hands-toward-ball-address-impact': gain('hands'),
    'hands-height-address-impact': rise('hands'),
    'head-height-address-impact': rise('head-centre'),
    'shaft-angle-at-address': shaft('address'),
    'shaft-steeper-at-lead-arm-down': shaft('lead-arm-parallel-down') - shaft('address'),
    'hands-above-address-shaft-at-lead-arm-down':
      (hands.z - foot.z) * Math.sin(line) + (hands.y - foot.y) * Math.cos(line),
    'clubhead-outside-hands-at-shaft-parallel-back': outside('shaft-parallel-back'),
    'clubhead-outside-hands-at-shaft-parallel-down': outside('shaft-parallel-down'),
  };
}
