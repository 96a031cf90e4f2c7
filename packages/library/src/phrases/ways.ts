/** Which way a measurement lies, in words for a student: a value above nought, and one below. */
export type Way = { readonly positive: string; readonly negative: string };

const way = (positive: string, negative: string): Way => ({ positive, negative });
const target = way('towards the target', 'away from the target');
const higher = way('higher', 'lower');
const plain = way('', '');

const ways: Readonly<Record<string, Way>> = {
  'handle-ahead-of-lead-thigh': way('in front', 'behind'),
  'handle-ahead-of-ball': way('in front of the ball', 'behind the ball'),
  'handle-ahead-of-hip-middle': way('in front of the middle of your hips', 'behind the middle of your hips'),
  'hip-middle-along-ankles': way('of the way to your {lead} ankle', 'outside your {trail} ankle'),
  'hip-middle-behind-ball': way('behind the ball', 'in front of the ball'),
  'ball-inside-lead-heel': way('inside your {lead} heel', 'outside your {lead} heel'),
  'toe-line-to-target-stick': way('open', 'closed'),
  'shaft-lean-at-address': way('towards the target', 'away from the target'),
  'stance-width': way('apart', 'crossed'),
  'hands-to-thighs-at-address': way('in front of your thighs', 'behind the front of your thighs'),
  'trunk-bend-at-address': way('forward', 'back'),
  'ball-ahead-of-toe-line': way('beyond your toes', 'behind your toes'),
  'hip-shift-address-top': target,
  'head-shift-address-top': target,
  'trunk-lean-at-top': target,
  'hip-shift-top-lead-arm-down': target,
  'hip-shift-address-impact': target,
  'hip-past-ball-at-finish': way('past the ball', 'short of the ball'),
  'head-shift-address-impact': target,
  'neck-base-shift-address-impact': target,
  'neck-base-height-address-impact': higher,
  'head-height-address-impact': higher,
  'grip-end-to-ball-line-at-shaft-parallel-down': way('past the ball', 'short of the ball'),
  'handle-ahead-of-ball-at-impact': way('in front of the ball', 'behind the ball'),
  'shaft-lean-at-impact': way('towards the target', 'away from the target'),
  'lead-elbow-after-impact': plain,
  'tempo-ratio': plain,
  'seat-toward-ball-address-impact': way('towards the ball', 'away from the ball'),
  'loss-of-trunk-bend-address-impact': way('more upright', 'more bent'),
  'hands-toward-ball-address-impact': way('towards the ball', 'towards your body'),
  'shaft-steeper-at-lead-arm-down': way('steeper', 'flatter'),
  'clubhead-outside-hands-at-shaft-parallel-down': way('outside your hands', 'inside your hands'),
  'clubhead-outside-hands-at-shaft-parallel-back': way('outside your hands', 'inside your hands'),
};

/** Which way a measurement lies, in words; undefined for one that no phrase tells of. */
export const wayOf = (key: string): Way | undefined => ways[key];
