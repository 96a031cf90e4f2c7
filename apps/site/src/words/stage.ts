/** The stage of the review: what is done to the picture, and by which keys. */
export const stageWords = {
  hold: 'Hold: slowly',
  loopImpact: 'Loop around impact',
  loopHere: 'Loop around here',
  times: (times: number) => `${Number(times.toFixed(1))} ×`,
  darker: 'Darker',
  brighter: 'Brighter',
  fullScreen: 'Full screen',
  lines: 'Lines on the picture',
  lightAndLines: 'Light and lines',
  aimHelp: 'Arrows move it, with Shift by ten. Enter places it, Escape leaves it.',
  heldHelp: 'Arrows move this mark, with Shift by ten. Escape lets it go.',
  confirmStill: 'Confirm the still points here',
  cameraMoves: 'The ball was marked in two places: the camera moves, so nothing is carried over.',
  orFilmAgain: 'Millimetres between moments mean little then. Ask to film again with the phone on a stand.',

  keysTitle: 'Keys',
  keysOn: 'Keys are on',
  close: 'Close',
  keyGroups: [
    {
      title: 'Step',
      keys: [
        ['← →', 'one frame'],
        ['Shift ← →', 'ten frames'],
        [', .', 'one frame, also while aiming'],
        ['[ ]', 'the moment before, the next one'],
        ['s', 'where the sound suggests impact'],
        ['Home End', 'first and last frame'],
        ['p', 'hold: play slowly'],
        ['o', 'loop around impact'],
      ],
    },
    {
      title: 'Mark',
      keys: [
        ['a', 'aim at the mark that is asked for'],
        ['Arrows', 'move the aim; with Shift by ten'],
        ['Enter', 'place it and go on'],
        ['n', 'pass this one by'],
        ['Alt arrows', 'move the mark placed last'],
        ['x', 'take the mark away'],
        ['t', 'to where it is suggested'],
        ['y', 'confirm what is suggested, or the still points'],
        ['z', 'undo; with Shift redo'],
        ['Escape', 'stop aiming, let go'],
      ],
    },
    {
      title: 'Look',
      keys: [
        ['+ −', 'closer, wider; also the wheel'],
        ['i j k l', 'move the picture when closer'],
        ['0', 'the whole picture'],
        ['b', 'brighter; with Shift darker'],
        ['g', 'lines on or off'],
        ['f', 'full screen'],
        ['v', 'another swing beside this one'],
      ],
    },
    {
      title: 'Reply',
      keys: [['c', 'the film about the cause goes with it, or not']],
    },
    {
      title: 'Put right',
      keys: [
        ['e', 'view, hand, club, swing length'],
        ['?', 'show or hide this sheet'],
      ],
    },
  ],
} as const;

export const lineNames = {
  'ball-line': 'Ball line',
  'ankle-middle': 'Middle of the ankles',
  hips: 'Way of the hips',
  shaft: 'Shaft',
  'seat-line': 'Seat line',
  'toe-line': 'Toe line',
} as const;
