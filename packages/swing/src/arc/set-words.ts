import type { CountedBalls, DepthFrom } from './set-depths.ts';

export type SetRefusedWhy = 'driver' | 'sand' | 'no-swing' | 'no-depth' | 'do-not-fit';

const refusals: Readonly<Record<SetRefusedWhy, string>> = {
  driver: 'A driver meets the ball on its way up, off a tee: no fat share is told for it.',
  sand: 'In sand the club meets the ground before the ball on purpose: no fat share is told there.',
  'no-swing': 'No swing of this set has its clubhead marked over frames near the ball.',
  'no-depth': 'Nothing says how deep the arc runs: do a line test, or have ten balls counted with this club.',
  'do-not-fit':
    'What was counted on the ground and the low point of these frames do not fit together: look at the marks of ball and stick again, or do a line test.',
};

/** Why no fat share of a set is told, in words for a coach. */
export const refusalOfSet = (why: SetRefusedWhy) => ({ kind: 'refused', why, words: refusals[why] }) as const;

type Used = {
  readonly swings: number;
  readonly setUps: number;
  readonly from: DepthFrom;
  readonly brushes: number;
  readonly lie: string;
  readonly balls: CountedBalls | null;
};
/** From so many swings on, a player's own scatter says more than the usual one. */
const enoughSwings = 5;

/** What a fat share rests on and what would make it surer, in sentences for a coach. */
export const wordsOfSet = (used: Used): { readonly used: string[]; readonly missing: string[] } => {
  const { swings, setUps, from, brushes, lie, balls } = used;
  const ofSwings =
    swings === 1
      ? 'From one swing: it does not show this player’s own scatter, so the usual one is reckoned with.'
      : `From ${swings} swings${setUps > 1 ? ` of ${setUps} submissions` : ''}; their scatter is reckoned together with the usual one.`;
  const ofDepth =
    from === 'line-test'
      ? `How deep the arc runs comes from the line test of ${brushes} brushes; the balls that were counted are not used.`
      : `How deep the arc runs is what brings about the count: ${balls?.fat ?? 0} of ${balls?.of ?? 0} balls met the ground first.`;
  const missing = [
    ...(swings < enoughSwings
      ? [
          `The clubhead marked on ${enoughSwings - swings} more ${swings === 4 ? 'swing' : 'swings'} would show the own scatter.`,
        ]
      : []),
    ...(from === 'line-test' ? [] : ['A line test would tell the depth by itself.']),
    ...(from === 'balls' && lie === 'mat' ? ['A mat hides fat shots: the count may be too low.'] : []),
    ...(from === 'balls' && brushes > 0
      ? ['The line test begins past the low point of these frames and is not used.']
      : []),
  ];
  return { used: [ofSwings, ofDepth], missing };
};
