import type { RungStep } from '@ballfirst/practice/next-rung';
import { firmer } from './firmer.ts';
import type { Practised } from './second-of.ts';

/** What is kept of a step. The programme ends with the last rung of its first drill; the second one only supports it. */
export const keptStep = (
  of: Practised,
  step: RungStep,
  at: { readonly now: Date; readonly ageGroup: string },
) => {
  const exaggeration = step.firmer ? firmer(of, at.ageGroup) : of.exaggeration;
  if (of.second) return { secondRung: step.rung, secondExaggeration: exaggeration };
  return { rung: step.rung, exaggeration, ...(step.done ? { status: 'done', endedAt: at.now } : {}) };
};
