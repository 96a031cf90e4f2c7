import { type Rung, type RungId, rungs } from '../types.ts';

/** Swings and speed of a rung where a drill asks for nothing else: common practice, no source. */
const usual: Readonly<Record<RungId, Omit<Rung, 'id' | 'clean'>>> = {
  rehearsal: { ball: false, balls: 10, speedPercent: 15, filmed: false },
  brush: { ball: false, balls: 10, speedPercent: 25, filmed: false },
  'hip-high': { ball: true, balls: 10, speedPercent: 30, filmed: false },
  'three-quarter': { ball: true, balls: 10, speedPercent: 60, filmed: false },
  full: { ball: true, balls: 10, speedPercent: 85, filmed: false },
  transfer: { ball: true, balls: 9, speedPercent: 85, filmed: false },
};

type Written = string | ({ readonly clean: string } & Partial<Omit<Rung, 'id'>>);

/** The rungs of a drill in their order; each says what "clean" is, and what differs from the usual. */
export const ladder = (written: Readonly<Partial<Record<RungId, Written>>>): readonly Rung[] =>
  rungs.flatMap((id) => {
    const one = written[id];
    if (one === undefined) return [];
    return [{ ...usual[id], ...(typeof one === 'string' ? { clean: one } : one), id }];
  });
