import { deg, type MeasurementName, mm } from './measurement-name.ts';

/** What is measured from behind. `head-height-address-impact` is made in both views and stands with the others. */
export const namesDownTheLine = {
  // Address.
  'trunk-bend-at-address': deg(
    'Trunk bend at address',
    'trunk bent {n} forward at address',
    'trunk leaning {n} back at address',
  ),
  'hands-to-thighs-at-address': mm(
    'Hands to the thighs at address',
    'hands {n} in front of the thighs at address',
    'hands {n} inside the front of the thighs at address',
  ),
  'hands-ahead-of-toe-line': mm(
    'Hands beyond the toe line at address',
    'hands {n} beyond the toe line at address',
    'hands {n} inside the toe line at address',
  ),
  'ball-ahead-of-toe-line': mm(
    'Ball beyond the toe line',
    'ball {n} beyond the toe line',
    'ball {n} inside the toe line',
  ),
  // The toes against a stick on the target line: + the line of the toes points to the player's own side of it.
  'toe-line-to-target-stick': deg(
    'Line of the toes against the target stick',
    'toes {n} open to the target stick',
    'toes {n} closed to the target stick',
  ),
  'shaft-angle-at-address': deg(
    'Shaft to the ground at address',
    'shaft {n} to the ground at address',
    'shaft {n} below level at address',
  ),

  // On the way back and down.
  'clubhead-outside-hands-at-shaft-parallel-back': mm(
    'Clubhead outside the hands, shaft parallel back',
    'clubhead {n} outside the hands with the shaft parallel on the way back',
    'clubhead {n} inside the hands with the shaft parallel on the way back',
  ),
  'shaft-steeper-at-lead-arm-down': deg(
    'Shaft against the address shaft, lead arm parallel down',
    'shaft {n} steeper than at address by lead arm parallel on the way down',
    'shaft {n} flatter than at address by lead arm parallel on the way down',
  ),
  'hands-above-address-shaft-at-lead-arm-down': mm(
    'Hands against the address shaft, lead arm parallel down',
    'hands {n} above the address shaft by lead arm parallel on the way down',
    'hands {n} below the address shaft by lead arm parallel on the way down',
  ),
  'clubhead-outside-hands-at-shaft-parallel-down': mm(
    'Clubhead outside the hands, shaft parallel down',
    'clubhead {n} outside the hands with the shaft parallel on the way down',
    'clubhead {n} inside the hands with the shaft parallel on the way down',
  ),

  // Address to impact.
  'loss-of-trunk-bend-address-impact': deg(
    'Trunk bend lost, address to impact',
    'trunk {n} more upright at impact',
    'trunk {n} more bent at impact',
  ),
  'seat-toward-ball-address-impact': mm(
    'Seat towards the ball, address to impact',
    'seat {n} closer to the ball at impact',
    'seat {n} farther from the ball at impact',
  ),
  'hands-toward-ball-address-impact': mm(
    'Hands towards the ball, address to impact',
    'hands {n} closer to the ball line at impact',
    'hands {n} closer to the body at impact',
  ),
  'hands-height-address-impact': mm(
    'Height of the hands, address to impact',
    'hands {n} higher at impact',
    'hands {n} lower at impact',
  ),
} as const satisfies Record<string, MeasurementName>;
