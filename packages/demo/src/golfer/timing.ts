/** Times of the swing in seconds from the first frame. Back .82 s and down .28 s: a ratio near three [common practice]. */
export const timing = {
  start: 0.3,
  shaftParallelBack: 0.62,
  leadArmParallelBack: 0.8,
  top: 1.12,
  leadArmParallelDown: 1.285,
  shaftParallelDown: 1.355,
  impact: 1.4,
  shaftParallelThrough: 1.45,
  finish: 1.92,
  end: 2.2,
} as const;
