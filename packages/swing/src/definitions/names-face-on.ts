import { deg, type MeasurementName, mm, percent, ratio } from './measurement-name.ts';

/** What is measured face-on. */
export const namesFaceOn = {
  // Address. Along the ankles: 0 is over the trail ankle, 100 over the lead ankle.
  'ankle-distance': mm('Distance between the ankles', 'ankles {n} apart', 'ankles {n} apart'),
  'stance-width': mm('Distance between the heels', 'heels {n} apart', 'heels crossed by {n}'),
  'hip-middle-along-ankles': percent(
    'Hip-middle along the ankle line',
    'hip-middle at {n} of the way from trail to lead ankle at address',
    'hip-middle {n} outside the trail ankle at address',
  ),
  'hip-middle-behind-ball': mm(
    'Hip-middle behind the ball',
    'hip-middle {n} behind the ball at address',
    'hip-middle {n} ahead of the ball at address',
  ),
  'head-behind-ball': mm(
    'Head behind the ball',
    'head {n} behind the ball at address',
    'head {n} ahead of the ball at address',
  ),
  'neck-base-behind-ball': mm(
    'Neck-base behind the ball',
    'neck-base {n} behind the ball at address',
    'neck-base {n} ahead of the ball at address',
  ),
  // A sound handle with an 8-iron: about 0 to 90 mm ahead of the ball, 60 to 170 mm ahead of hip-middle (proxies).
  'handle-ahead-of-ball': mm(
    'Handle ahead of the ball',
    'handle {n} ahead of the ball at address',
    'handle {n} behind the ball at address',
  ),
  'handle-ahead-of-hip-middle': mm(
    'Handle ahead of hip-middle',
    'handle {n} ahead of hip-middle at address',
    'handle {n} behind hip-middle at address',
  ),
  'handle-ahead-of-lead-thigh': mm(
    'Handle to the inside of the lead thigh',
    'handle {n} ahead of the inside of the lead thigh',
    'handle {n} behind the inside of the lead thigh',
  ),
  'ball-inside-lead-heel': mm(
    'Ball inside the lead heel',
    'ball {n} inside the lead heel',
    'ball {n} outside the lead heel',
  ),
  'trunk-lean-at-address': deg(
    'Trunk lean at address',
    'trunk {n} towards the target at address',
    'trunk {n} away from the target at address',
  ),
  'shaft-lean-at-address': deg(
    'Shaft lean at address',
    'shaft {n} forward at address',
    'shaft {n} back at address',
  ),

  // Address to top.
  'hip-shift-address-top': mm(
    'Hips, address to top',
    'hips {n} towards the target at the top',
    'hips {n} away from the target at the top',
  ),
  'hip-shift-address-top-percent': percent(
    'Hips, address to top, of the ankle distance',
    'hips {n} of the stance towards the target at the top',
    'hips {n} of the stance away from the target at the top',
  ),
  'head-shift-address-top': mm(
    'Head, address to top',
    'head {n} towards the target at the top',
    'head {n} away from the target at the top',
  ),
  'head-shift-address-top-percent': percent(
    'Head, address to top, of the ankle distance',
    'head {n} of the stance towards the target at the top',
    'head {n} of the stance away from the target at the top',
  ),
  'head-height-address-top': mm(
    'Head height, address to top',
    'head {n} higher at the top',
    'head {n} lower at the top',
  ),
  'hip-height-address-top': mm(
    'Hip height, address to top',
    'hips {n} higher at the top',
    'hips {n} lower at the top',
  ),
  'neck-base-shift-address-top': mm(
    'Neck-base, address to top',
    'neck-base {n} towards the target at the top',
    'neck-base {n} away from the target at the top',
  ),
  'neck-base-shift-address-top-percent': percent(
    'Neck-base, address to top, of the ankle distance',
    'neck-base {n} of the stance towards the target at the top',
    'neck-base {n} of the stance away from the target at the top',
  ),
  'neck-base-height-address-top': mm(
    'Neck-base height, address to top',
    'neck-base {n} higher at the top',
    'neck-base {n} lower at the top',
  ),
  'head-ahead-of-hip-middle-at-top': mm(
    'Head ahead of hip-middle at the top',
    'head {n} ahead of hip-middle at the top',
    'head {n} behind hip-middle at the top',
  ),
  'trunk-lean-at-top': deg(
    'Trunk lean at the top',
    'trunk {n} towards the target at the top',
    'trunk {n} away from the target at the top',
  ),

  // Top to lead arm parallel on the way down.
  'hip-shift-top-lead-arm-down': mm(
    'Hips, top to lead arm parallel',
    'hips {n} forward from the top by lead arm parallel',
    'hips {n} back from the top by lead arm parallel',
  ),
  'hip-shift-top-lead-arm-down-percent': percent(
    'Hips, top to lead arm parallel, of the ankle distance',
    'hips {n} of the stance forward from the top by lead arm parallel',
    'hips {n} of the stance back from the top by lead arm parallel',
  ),
  'head-shift-top-lead-arm-down': mm(
    'Head, top to lead arm parallel',
    'head {n} forward from the top by lead arm parallel',
    'head {n} back from the top by lead arm parallel',
  ),
  'head-shift-top-lead-arm-down-percent': percent(
    'Head, top to lead arm parallel, of the ankle distance',
    'head {n} of the stance forward from the top by lead arm parallel',
    'head {n} of the stance back from the top by lead arm parallel',
  ),
  'head-height-top-lead-arm-down': mm(
    'Head height, top to lead arm parallel',
    'head {n} higher by lead arm parallel',
    'head {n} lower by lead arm parallel',
  ),
  'hip-height-top-lead-arm-down': mm(
    'Hip height, top to lead arm parallel',
    'hips {n} higher by lead arm parallel',
    'hips {n} lower by lead arm parallel',
  ),
  'neck-base-shift-top-lead-arm-down': mm(
    'Neck-base, top to lead arm parallel',
    'neck-base {n} forward from the top by lead arm parallel',
    'neck-base {n} back from the top by lead arm parallel',
  ),
  'neck-base-shift-top-lead-arm-down-percent': percent(
    'Neck-base, top to lead arm parallel, of the ankle distance',
    'neck-base {n} of the stance forward from the top by lead arm parallel',
    'neck-base {n} of the stance back from the top by lead arm parallel',
  ),
  'neck-base-height-top-lead-arm-down': mm(
    'Neck-base height, top to lead arm parallel',
    'neck-base {n} higher by lead arm parallel',
    'neck-base {n} lower by lead arm parallel',
  ),
  'forearm-shaft-angle-at-lead-arm-down': deg(
    'Lead forearm to shaft, lead arm parallel down',
    '{n} between lead forearm and shaft by lead arm parallel on the way down',
    '{n} between lead forearm and shaft by lead arm parallel on the way down',
  ),

  // Shaft parallel to the ground on the way down, impact, finish.
  'grip-end-to-ball-line-at-shaft-parallel-down': mm(
    'Grip end to the ball line, shaft parallel down',
    'grip end {n} past the ball line with the shaft parallel on the way down',
    'grip end {n} short of the ball line with the shaft parallel on the way down',
  ),
  'hip-shift-address-impact': mm(
    'Hips, address to impact',
    'hips {n} towards the target at impact',
    'hips {n} away from the target at impact',
  ),
  'hip-shift-address-impact-percent': percent(
    'Hips, address to impact, of the ankle distance',
    'hips {n} of the stance towards the target at impact',
    'hips {n} of the stance away from the target at impact',
  ),
  'hip-height-address-impact': mm(
    'Hip height, address to impact',
    'hips {n} higher at impact',
    'hips {n} lower at impact',
  ),
  'head-shift-address-impact': mm(
    'Head, address to impact',
    'head {n} towards the target at impact',
    'head {n} away from the target at impact',
  ),
  'head-shift-address-impact-percent': percent(
    'Head, address to impact, of the ankle distance',
    'head {n} of the stance towards the target at impact',
    'head {n} of the stance away from the target at impact',
  ),
  'head-height-address-impact': mm(
    'Head height, address to impact',
    'head {n} higher at impact',
    'head {n} lower at impact',
  ),
  'neck-base-shift-address-impact': mm(
    'Neck-base, address to impact',
    'neck-base {n} towards the target at impact',
    'neck-base {n} away from the target at impact',
  ),
  'neck-base-shift-address-impact-percent': percent(
    'Neck-base, address to impact, of the ankle distance',
    'neck-base {n} of the stance towards the target at impact',
    'neck-base {n} of the stance away from the target at impact',
  ),
  'neck-base-height-address-impact': mm(
    'Neck-base height, address to impact',
    'neck-base {n} higher at impact',
    'neck-base {n} lower at impact',
  ),
  'handle-ahead-of-ball-at-impact': mm(
    'Handle ahead of the ball at impact',
    'handle {n} ahead of the ball at impact',
    'handle {n} behind the ball at impact',
  ),
  'shaft-lean-at-impact': deg(
    'Shaft lean at impact',
    'shaft {n} forward at impact',
    'shaft {n} back at impact',
  ),
  'trail-heel-lift-at-impact': mm(
    'Trail heel lift at impact',
    'trail heel {n} off the ground at impact',
    'trail heel {n} lower at impact than at address',
  ),
  'lead-elbow-after-impact': deg(
    'Bend of the lead elbow after impact',
    'lead elbow bent {n} with the shaft parallel after impact',
    'lead elbow {n} past straight after impact',
  ),
  'hip-past-ball-at-finish': mm(
    'Hips past the ball at the finish',
    'hips {n} past the ball at the finish',
    'hips {n} short of the ball at the finish',
  ),
  'hip-over-lead-ankle-at-finish': mm(
    'Hips over the lead ankle at the finish',
    'hips {n} past the lead ankle at the finish',
    'hips {n} short of the lead ankle at the finish',
  ),

  // The arc: from the clubhead on one frame after another.
  'low-point-ahead-of-ball': mm(
    'Lowest point of the clubhead',
    'lowest point of the clubhead {n} ahead of the ball',
    'lowest point of the clubhead {n} behind the ball',
  ),

  // Times.
  'tempo-ratio': ratio('Time back to time down', 'time back to time down {n}', 'time back to time down {n}'),
} as const satisfies Record<string, MeasurementName>;
