import type { StationObject } from '../types.ts';

type Middle = { readonly xMm: number; readonly yMm: number };

const object =
  (what: StationObject['what'], lengthMm: number, widthMm: number) =>
  (label: string, { xMm, yMm }: Middle, more: Partial<StationObject> = {}): StationObject => ({
    what,
    xMm,
    yMm,
    lengthMm,
    widthMm,
    rotationDeg: 0,
    label,
    ...more,
  });

/** A cushion, a headcover or a rolled towel: soft, whatever lies there. */
export const cushion = object('cushion', 250, 120);
/** A golf bag or a padded chair, its soft side towards the player. */
export const bag = object('cushion', 300, 250);
/** A stick, or a spare club, lying flat. */
export const stick = object('stick', 1000, 12);
/** A strip of tape, or of paper, flat on the ground. */
export const tape = object('tape', 300, 25);
export const tee = object('tee', 12, 12);
