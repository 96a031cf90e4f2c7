/** Counts of ten-ball tallies as a student tapped them; other outcomes are in `balls` only. */
export type Tally = {
  readonly balls: number;
  readonly solid: number;
  readonly fat: number;
  readonly thin: number;
  readonly topped: number;
};

/** A practice entry as the roll-up reads it; `localDate` is the student's own day, YYYY-MM-DD. */
export type LoggedEntry = {
  readonly studentId: string;
  readonly localDate: string;
  readonly balls: number;
  readonly clean: number;
  readonly pain: 'none' | 'new' | 'worse';
};

/** A submission as the roll-up reads it. */
export type SentSwing = {
  readonly studentId: string;
  readonly localDate: string;
  readonly tally: Tally;
};

/**
 * One student's week (Monday of the ISO week). `days`: days with an entry; `pains`: entries with new or worse pain;
 * `swings`: submissions sent; `tally…`: sums over their tallies.
 */
export type WeekRow = {
  readonly studentId: string;
  readonly week: string;
  readonly entries: number;
  readonly balls: number;
  readonly clean: number;
  readonly days: number;
  readonly pains: number;
  readonly swings: number;
  readonly tallyBalls: number;
  readonly tallySolid: number;
  readonly tallyFat: number;
  readonly tallyThin: number;
  readonly tallyTopped: number;
};

export const emptyWeek = (studentId: string, week: string): WeekRow => ({
  studentId,
  week,
  entries: 0,
  balls: 0,
  clean: 0,
  days: 0,
  pains: 0,
  swings: 0,
  tallyBalls: 0,
  tallySolid: 0,
  tallyFat: 0,
  tallyThin: 0,
  tallyTopped: 0,
});
