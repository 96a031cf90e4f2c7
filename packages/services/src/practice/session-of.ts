import type { Session } from '@ballfirst/contracts/http/practice';
import type { RungId } from '@ballfirst/library/types';
import { sessionPlan } from '@ballfirst/practice/session-plan';
import { sessionWords } from '@ballfirst/practice/session-words';
import type { z } from 'zod';

/** A swing with its routine and a look back takes so long. Common practice, no source (30 to 60 s). */
const swingSeconds = 40;

type Planned = {
  readonly rung: RungId;
  readonly daysPerWeek: number | null;
  readonly minutes: number;
  /** Swings a session, whatever the time: of the drill at this place, and of the balls at hand. */
  readonly atMost: number;
};

/** One session on a rung, in figures and in words: as many swings as the minutes hold, no more than are sound. */
export const sessionOf = (planned: Planned): z.output<typeof Session> => {
  const { rung, daysPerWeek, minutes, atMost } = planned;
  const inTime = Math.floor((minutes * 60) / swingSeconds);
  const plan = sessionPlan(rung, Math.max(1, Math.min(atMost, inTime)));
  return {
    ...plan,
    blocks: [...plan.blocks],
    daysPerWeek,
    minutes,
    words: [...sessionWords(plan, { daysPerWeek, minutes })],
  };
};
