/**
 * A phone reads its picture row by row from the top: the grip end is seen earlier than the clubhead, and a shaft that
 * turns meanwhile looks bent back. From the first row to the last, seconds, and how fast a shaft turns in the picture at
 * impact. Common practice, no source: 8 to 20 ms; an 8-iron at 35 to 40 m/s.
 */
export const usualShutter = {
  readoutS: 0.014,
  uReadoutS: 0.0035,
  turnDegPerS: 2400,
  uTurnDegPerS: 400,
} as const;

export type Bent = { readonly deg: number; readonly uDeg: number };

/**
 * By how much a shaft at impact leans less in the picture than in space.
 *
 * @param rowsShare - height of the grip end over the clubhead in the picture, as a share of the picture's height
 * @returns degrees to be added, with their standard uncertainty
 * @source derived: the turn while so many rows are read; by the law of propagation (JCGM 100:2008, equation 12)
 * @example bentByShutter(0.16).deg // 5.4
 */
export function bentByShutter(rowsShare: number): Bent {
  const { readoutS, uReadoutS, turnDegPerS, uTurnDegPerS } = usualShutter;
  const deg = rowsShare * readoutS * turnDegPerS;
  return { deg, uDeg: Math.abs(deg) * Math.hypot(uReadoutS / readoutS, uTurnDegPerS / turnDegPerS) };
}
