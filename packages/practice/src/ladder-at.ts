import type { Drill, Place, Rung } from '@ballfirst/library/types';
import { stationFor } from './drill-fit.ts';

/** The rungs that are sound at the place: up to the station's last one. */
export const ladderAt = (drill: Drill, place: Place): readonly Rung[] => {
  const last = stationFor(drill, place)?.lastRung;
  const end = last === undefined ? -1 : drill.ladder.findIndex((rung) => rung.id === last);
  return end < 0 ? drill.ladder : drill.ladder.slice(0, end + 1);
};

/** The same without the rungs that need a ball, where there are none. */
export const ladderWith = (drill: Drill, place: Place, balls: number | undefined): readonly Rung[] =>
  balls === 0 ? ladderAt(drill, place).filter((rung) => !rung.ball) : ladderAt(drill, place);
