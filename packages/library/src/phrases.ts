/**
 * A saved explanation a coach may put into a reply. `{lead}` and `{trail}` become left or right; other variables are filled
 * from the swing: `{player}`, `{club}`, `{fault}`, `{count}`, `{balls}`, `{cause}`, `{drill}`, `{measured:…}`. What stands in
 * double brackets is left out where its value was not measured.
 */
export type Phrase = {
  readonly id: string;
  readonly about: string;
  readonly text: string;
  /** Absent: it may be said with any cause. */
  readonly causes?: readonly string[];
  /** Said only where this measurement lies on this side of its band, or was not made; its figure's words fit that side. */
  readonly when?: { readonly key: string; readonly side: 'below' | 'above' };
};

const ofCause = (
  id: string,
  causes: readonly string[],
  when: NonNullable<Phrase['when']>,
  text: string,
): Phrase => ({ id, about: 'the cause', causes, when, text });

const ofMeasurements: readonly Phrase[] = [
  ofCause(
    'handle-behind',
    ['handle-back'],
    { key: 'handle-ahead-of-lead-thigh', side: 'below' },
    'At the start your hands are [[{measured:handle-ahead-of-lead-thigh} ]]behind the inside of your {lead} thigh. Put them in front of it before anything moves.',
  ),
  ofCause(
    'hips-drift',
    ['sway-away'],
    { key: 'hip-shift-address-top', side: 'below' },
    'On the way back your hips drift [[{measured:hip-shift-address-top} ]]away from the target, and the bottom of the swing goes with them.',
  ),
  ofCause(
    'hips-stay',
    ['hang-back'],
    { key: 'hip-shift-top-lead-arm-down', side: 'below' },
    'From the top your hips hardly move forward before your arms come down. Be on your {lead} foot by then.',
  ),
  ofCause(
    'hips-stand-back',
    ['hips-back-at-address'],
    { key: 'hip-middle-along-ankles', side: 'below' },
    'Before you swing, your hips stand nearer your {trail} foot than the middle. Set your belt half-way between your ankles.',
  ),
  ofCause(
    'body-drops',
    ['dip'],
    { key: 'neck-base-height-address-impact', side: 'below' },
    'At the ball your collar is [[{measured:neck-base-height-address-impact} ]]lower than when you started, so the ground comes sooner.',
  ),
  ofCause(
    'body-rises',
    ['lift'],
    { key: 'neck-base-height-address-impact', side: 'above' },
    'At the ball your collar is [[{measured:neck-base-height-address-impact} ]]higher than when you started, so the club passes too high.',
  ),
  ofCause(
    'club-thrown',
    ['thrown-early'],
    { key: 'grip-end-to-ball-line-at-shaft-parallel-down', side: 'below' },
    'On the way down, with the club level, your hands are still [[{measured:grip-end-to-ball-line-at-shaft-parallel-down} ]]short of the ball: the clubhead has been thrown ahead of its time.',
  ),
  ofCause(
    'head-ahead',
    ['upper-body-lunge'],
    { key: 'head-shift-address-impact', side: 'above' },
    'At the ball your head is [[{measured:head-shift-address-impact} ]]nearer the target than when you started. Let the hips go first and the head stay.',
  ),
];

const plain: readonly Phrase[] = [
  {
    id: 'how-often',
    about: 'opening',
    text: '{player}, I have looked at your swing with the {club}: it was {fault} in {count} of {balls}.',
  },
  {
    id: 'one-drill',
    about: 'how to practise',
    text: 'Your drill is “{drill}”. Do nothing else until it holds.',
  },
  {
    id: 'one-thing',
    about: 'how to practise',
    text: 'Work on this one thing only. Everything else can wait until it holds.',
  },
  {
    id: 'film-and-look',
    about: 'how to practise',
    text: 'Fewer balls, more looks: film one swing of three, look, put it right, swing again.',
  },
  {
    id: 'thin-is-progress',
    about: 'what to expect',
    text: 'Expect a few thin ones. For someone who hit the ground first they are a good sign: the low point has moved forward.',
  },
  {
    id: 'overdo-it',
    about: 'what to expect',
    text: 'It has to feel far too much. What feels overdone usually looks just right on film.',
  },
  {
    id: 'stop-if-it-hurts',
    about: 'safety',
    text: 'Stop if anything hurts, and have it looked at before you go on. Keep the space around you clear.',
  },
  {
    id: 'why-fat',
    about: 'fat',
    text: 'The club reaches the ground where your weight is. While that is over your {trail} foot, the ground comes first.',
  },
  {
    id: 'ball-is-in-the-way',
    about: 'fat',
    text: 'Brush the ground in front of the ball. The ball is only in the way.',
  },
];

export const phrases: readonly Phrase[] = [...ofMeasurements, ...plain];
