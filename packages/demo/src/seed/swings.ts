import type { Tally } from '@ballfirst/contracts/words';

/** The swings of the demo. `clip` is a kept clip; `answered` tells what the coach found and what came of it. */
export type SwingLine = {
  readonly academy: string;
  readonly student: string;
  readonly clip: string;
  readonly hoursAgo: number;
  readonly club: '7-iron' | '8-iron' | '9-iron';
  readonly lie: 'mat' | 'fairway';
  readonly tally: Tally;
  readonly note: string;
  readonly pain?: { readonly kind: 'new' | 'worse'; readonly note: string };
  readonly answered?: {
    readonly coach: string;
    readonly afterHours: number;
    readonly cause: string;
    readonly drill: string;
    readonly words: string;
    readonly read: boolean;
    /** Days after the reply, balls and clean ones. */
    readonly practice: readonly (readonly [days: number, rung: string, balls: number, clean: number])[];
  };
};

const ten = (misses: Partial<Omit<Tally, 'balls' | 'counted' | 'solid'>>, counted = true): Tally => {
  const all = { fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0, ...misses };
  const missed = Object.values(all).reduce((sum, it) => sum + it, 0);
  return { balls: 10, solid: 10 - missed, counted, ...all };
};

export const swings: readonly SwingLine[] = [
  {
    academy: 'quillmere',
    student: 'maren',
    clip: 'sway-away',
    hoursAgo: 4,
    club: '8-iron',
    lie: 'mat',
    tally: ten({ fat: 6, thin: 2 }),
    note: 'The mat grabs the club. On grass it is worse.',
  },
  {
    academy: 'quillmere',
    student: 'piet',
    clip: 'hang-back',
    hoursAgo: 20,
    club: '8-iron',
    lie: 'fairway',
    tally: ten({ fat: 7, topped: 1 }),
    note: 'My trial ends in two days. Is this fixable?',
  },
  {
    academy: 'quillmere',
    student: 'edda',
    clip: 'handle-back',
    hoursAgo: 2,
    club: '9-iron',
    lie: 'mat',
    tally: ten({ fat: 4, thin: 1 }, false),
    note: 'Short swing these days, I like it slow.',
    pain: { kind: 'new', note: 'Sore on the inside of the left elbow since Sunday.' },
  },
  {
    academy: 'quillmere',
    student: 'ruben',
    clip: 'left-hander-hang-back',
    hoursAgo: 7,
    club: '8-iron',
    lie: 'mat',
    tally: ten({ fat: 5, thin: 2, toe: 1 }),
    note: 'Left-handed. Always filmed from the front, as you asked.',
  },
  {
    academy: 'quillmere',
    student: 'joss',
    clip: 'thrown-early',
    hoursAgo: 1,
    club: '7-iron',
    lie: 'mat',
    tally: ten({ fat: 3, thin: 5 }),
    note: '',
  },
  {
    academy: 'quillmere',
    student: 'noor',
    clip: 'hips-back-at-address',
    hoursAgo: 26,
    club: '9-iron',
    lie: 'fairway',
    tally: ten({ fat: 5, topped: 2 }),
    note: 'First time I film myself.',
  },
  {
    academy: 'quillmere',
    student: 'liv',
    clip: 'left-hander-sway-away',
    hoursAgo: 3,
    club: '8-iron',
    lie: 'fairway',
    tally: ten({ fat: 2, thin: 2 }),
    note: 'Two weeks of the line. Better, I think.',
  },
  {
    academy: 'quillmere',
    student: 'sunniva',
    clip: 'hang-back',
    hoursAgo: 76,
    club: '8-iron',
    lie: 'mat',
    tally: ten({ fat: 6, thin: 1 }),
    note: 'Everything behind the ball.',
    answered: {
      coach: 'tamsin@quillmere.example',
      afterHours: 5,
      cause: 'hang-back',
      drill: 'lead-side-start',
      read: true,
      words:
        'Good: your set-up is quiet and your head stays still. One thing first: your weight stays behind you as you start down, so the club reaches the ground before the ball. Start every swing this week already on the front foot. Thin shots are fine, they mean it works.',
      practice: [
        [1, 'rehearsal', 10, 7],
        [1, 'brush', 10, 6],
        [2, 'hip-high', 10, 5],
      ],
    },
  },
  {
    academy: 'quillmere',
    student: 'cormac',
    clip: 'sway-away',
    hoursAgo: 24 * 21,
    club: '8-iron',
    lie: 'fairway',
    tally: ten({ fat: 6, thin: 2 }),
    note: 'Fat, then thin, then fat.',
    answered: {
      coach: 'bertil@quillmere.example',
      afterHours: 6,
      cause: 'sway-away',
      drill: 'line-brush',
      read: true,
      words:
        'Your rhythm is lovely. One thing first: your hips drift away from the target going back, so the bottom of the swing moves with them. Brush the line without a ball until the brush starts on it.',
      practice: [
        [1, 'rehearsal', 10, 8],
        [2, 'brush', 10, 7],
        [4, 'hip-high', 10, 6],
        [6, 'hip-high', 10, 8],
        [9, 'three-quarter', 10, 6],
        [12, 'three-quarter', 10, 7],
      ],
    },
  },
  {
    academy: 'quillmere',
    student: 'liv',
    clip: 'left-hander-hang-back',
    hoursAgo: 24 * 16,
    club: '8-iron',
    lie: 'mat',
    tally: ten({ fat: 5, thin: 2 }),
    note: 'The ball comes out weak.',
    answered: {
      coach: 'tamsin@quillmere.example',
      afterHours: 3,
      cause: 'hang-back',
      drill: 'line-brush',
      read: true,
      words:
        'Well filmed. One thing first: you stay on the back foot as the club comes down. Line first, ball later: the brush starts on the line or just past it.',
      practice: [
        [1, 'rehearsal', 10, 6],
        [3, 'brush', 10, 7],
        [5, 'hip-high', 10, 6],
        [8, 'hip-high', 10, 7],
      ],
    },
  },
  {
    academy: 'quillmere',
    student: 'hugo',
    clip: 'handle-back',
    hoursAgo: 24 * 40,
    club: '9-iron',
    lie: 'fairway',
    tally: ten({ fat: 4, thin: 3 }),
    note: 'Old habits.',
    answered: {
      coach: 'imre@quillmere.example',
      afterHours: 7,
      cause: 'handle-back',
      drill: 'line-brush',
      read: true,
      words:
        'Steady and unhurried, keep that. One thing first: at the start your hands are behind the ball. Put them in front of the left thigh, then brush the line.',
      practice: [
        [2, 'rehearsal', 10, 8],
        [3, 'brush', 10, 8],
        [6, 'hip-high', 10, 7],
      ],
    },
  },
  {
    academy: 'quillmere',
    student: 'anika',
    clip: 'thrown-early',
    hoursAgo: 24 * 28,
    club: '7-iron',
    lie: 'mat',
    tally: ten({ fat: 3, thin: 4 }),
    note: 'Help.',
    answered: {
      coach: 'imre@quillmere.example',
      afterHours: 15,
      cause: 'thrown-early',
      drill: 'line-brush',
      read: false,
      words:
        'Nice balance at the end. One thing first: the club is thrown early on the way down. Brush the line slowly.',
      practice: [],
    },
  },
  {
    academy: 'saltbarrow',
    student: 'wren',
    clip: 'sway-away',
    hoursAgo: 5,
    club: '8-iron',
    lie: 'mat',
    tally: ten({ fat: 5, thin: 1 }),
    note: 'Hello from the far end of the range.',
  },
  {
    academy: 'saltbarrow',
    student: 'otto',
    clip: 'thrown-early',
    hoursAgo: 9,
    club: '7-iron',
    lie: 'fairway',
    tally: ten({ fat: 2, thin: 4 }),
    note: 'Back after a month.',
  },
  {
    academy: 'tannhollow',
    student: 'gesa',
    clip: 'handle-back',
    hoursAgo: 11,
    club: '9-iron',
    lie: 'fairway',
    tally: ten({ fat: 4, thin: 2 }),
    note: '',
  },
];
