import type { Entry } from '@ballfirst/contracts/http/practice';
import { Pain, Verdict } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import { drillById } from '@ballfirst/library/drills';
import { type Place, type Rung, type RungId, rungs } from '@ballfirst/library/types';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import type { PracticeEntry } from '@ballfirst/practice/entry';
import { ladderWith } from '@ballfirst/practice/ladder-at';
import { nextRung, type RungStep } from '@ballfirst/practice/next-rung';
import type { z } from 'zod';

export type EntryRow = Prisma.PracticeEntryGetPayload<object>;

/** A rung's id, as stored. @throws RangeError on one that is none */
export const rungId = (word: string): RungId => {
  const found = rungs.find((rung) => rung === word);
  if (found === undefined) throw new RangeError(`No rung is called "${word}".`);
  return found;
};

/** The rungs of a programme: those that are sound at its place, without a ball where there are none. */
export const ladderOf = (programme: {
  readonly drillId: string;
  readonly place: Place;
  readonly ballsAtMost: number | null;
}): readonly Rung[] =>
  ladderWith(drillById(programme.drillId), programme.place, programme.ballsAtMost ?? undefined);

const asPractised = (row: EntryRow): PracticeEntry => ({
  rung: rungId(row.rung),
  balls: row.balls,
  clean: row.clean,
  filmed: row.filmed,
  pain: Pain.parse(row.pain),
  localDate: row.localDate,
});

/** The drill that entries are of: the first of its programme, or the second that supports it. */
export type LadderOf = {
  readonly drillId: string;
  readonly second: boolean;
  readonly ladder: readonly Rung[];
};

const endWords = 'That was its last step: keep it to begin your sessions with.';

/** Where the student stands after the entries of one drill, in the order they were logged. */
export const stepAfter = ({ ladder, second }: LadderOf, rows: readonly EntryRow[]): RungStep =>
  nextRung(rows.map(asPractised), ladder, undefined, second ? endWords : undefined);

/** The entries of one drill as the contract says them, newest first; the words are those each one was answered with. */
export const entriesOf = (
  of: LadderOf,
  rows: readonly EntryRow[],
  hand: PlayingHand,
): z.output<typeof Entry>[] =>
  rows
    .map((row, index) => ({
      id: row.id,
      drillId: of.drillId,
      rung: row.rung,
      balls: row.balls,
      clean: row.clean,
      filmed: row.filmed,
      pain: Pain.parse(row.pain),
      localDate: row.localDate,
      at: row.at.toISOString(),
      verdict: Verdict.parse(row.verdict),
      words: wordsForHand(stepAfter(of, rows.slice(0, index + 1)).words, hand),
    }))
    .reverse();
