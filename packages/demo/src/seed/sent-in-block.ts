import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { localTime } from '@ballfirst/calendar/local-time';
import type { Block } from '@ballfirst/contracts/http/inbox';
import { workingHoursOf } from '@ballfirst/services/academy/working-hours-of';
import { dayEdges } from '@ballfirst/services/inbox/block-of';
import type { z } from 'zod';
import type { AcademyLine } from './academies.ts';
import type { Draw } from './draw.ts';

export type BlockName = z.output<typeof Block>;
const stepMs = 10 * 60_000;
/** Looked back: a long weekend before the promise of the slowest academy. */
const steps = 9 * 24 * 6;
/** Which stretch takes the place of one that this hour of the week has not: no noon in the afternoon. */
const instead: Readonly<Record<BlockName, readonly BlockName[]>> = {
  pain: ['pain'],
  late: ['late', 'before-noon', 'today', 'tomorrow', 'later'],
  'before-noon': ['before-noon', 'today', 'tomorrow', 'later', 'late'],
  today: ['today', 'tomorrow', 'later', 'late'],
  tomorrow: ['tomorrow', 'later', 'today', 'late'],
  later: ['later', 'tomorrow', 'today', 'late'],
};

/** For each stretch of the inbox: from and to how many steps ago a swing was sent that stands there now. */
export type SentSteps = Readonly<Record<BlockName, readonly [from: number, to: number]>>;

/** A later swing is never answered before an earlier one: each border is found by halving. */
export const sentSteps = (academy: AcademyLine, now: Date): SentSteps => {
  const working = workingHoursOf(academy);
  const { noon, tomorrow, dayAfter } = dayEdges(now, academy.zone);
  const answerBy = (step: number): Date =>
    addWorkingHours(new Date(now.getTime() - step * stepMs), academy.promiseHours, working);
  const firstAnswered = (by: (at: Date) => boolean): number => {
    let [low, high] = [0, steps];
    while (low < high) {
      const middle = Math.floor((low + high) / 2);
      if (by(answerBy(middle))) high = middle;
      else low = middle + 1;
    }
    return low;
  };
  const late = firstAnswered((at) => at <= now);
  const beforeNoon = firstAnswered((at) => at <= noon);
  const today = firstAnswered((at) => at < tomorrow);
  const soon = firstAnswered((at) => at < dayAfter);
  return {
    // A pain is new when it was told within the last hours.
    pain: [2, 30],
    late: [late, late + 6 * 8],
    'before-noon': [Math.min(beforeNoon, late), late],
    today: [today, Math.max(today, Math.min(beforeNoon, late))],
    tomorrow: [soon, today],
    later: [0, soon],
  };
};

/** When a swing was sent that stands in this stretch of the inbox now: by day, after its student had joined. */
export const sentInBlock = (
  draw: Draw,
  zone: string,
  of: {
    readonly block: BlockName;
    readonly sent: SentSteps;
    readonly joinedAt: Date;
    readonly now: Date;
  },
): Date => {
  const { block, sent, joinedAt, now } = of;
  const sinceJoining = Math.floor((now.getTime() - joinedAt.getTime()) / stepMs) - 1;
  for (const name of instead[block]) {
    const from = Math.max(2, sent[name][0]);
    const to = Math.min(sinceJoining, sent[name][1]);
    if (to <= from) continue;
    const at = Array.from({ length: 12 }, () => {
      const step = from + Math.floor(draw.next() * (to - from));
      return new Date(now.getTime() - step * stepMs);
    });
    return at.find((it) => isDay(it, zone)) ?? at[0] ?? now;
  }
  return new Date(Math.max(joinedAt.getTime(), now.getTime() - stepMs));
};

const isDay = (at: Date, zone: string): boolean => {
  const time = localTime(at, zone);
  return time >= '08:00' && time < '21:00';
};
