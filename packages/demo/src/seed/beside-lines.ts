/** What coaches and students of the main academy wrote down beside the lessons; days count back from the demo's now. */
export type BesideLine = {
  readonly student: string;
  readonly coach: string;
  readonly note?: string;
  readonly told?: { readonly goal: string; readonly body: string | null };
  readonly lesson?: { readonly daysAgo: number; readonly words: string };
  /** Where the brushes began, in mm, + past the line. */
  readonly lineTest?: { readonly daysAgo: number; readonly startsMm: readonly number[] };
};

export const besideLines: readonly BesideLine[] = [
  {
    student: 'finlo',
    coach: 'tamsin',
    note: 'Learns by feel; numbers make him stiff. Ask how the last brush sounded.',
    told: { goal: 'Eighteen holes without a fat wedge', body: null },
    lineTest: { daysAgo: 2, startsMm: [-60, -35, -45, -10, -30, 0, -25, -15, -40, -5] },
  },
  {
    student: 'sunniva',
    coach: 'tamsin',
    told: {
      goal: 'Hit the 8-iron off a mat without fear',
      body: 'Left knee replaced two years ago, turns well.',
    },
    lesson: { daysAgo: 2, words: 'Half an hour on the range: handle a hand forward, brush past the stick.' },
  },
  {
    student: 'liv',
    coach: 'tamsin',
    lineTest: { daysAgo: 1, startsMm: [-50, -15, -35, 10, -40, -20, -30, 5, -25, -45] },
  },
  {
    student: 'maren',
    coach: 'tamsin',
    told: { goal: 'Break ninety this winter', body: 'Stiff in the mornings.' },
    note: 'Works shifts: answers late, practises at home. Keep drills short.',
  },
];

/** Films of the main academy, one a cause. */
export const teachingLines = [
  {
    cause: 'hang-back',
    title: 'Over to the front foot, in four minutes',
    path: 'front-foot',
    words:
      'Tamsin stands over a stick that lies across the line and lets the hips pass it before the hands do: first without a ball, then from a tee. With captions.',
  },
  {
    cause: 'thrown-early',
    title: 'The towel and the late hands',
    path: 'late-hands',
    words:
      'A folded towel lies a grip behind the ball. The club misses it only when the hands lead; Tamsin shows both, slowly, from the side. With captions.',
  },
] as const;
