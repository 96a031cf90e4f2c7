import { observationByKey } from '@ballfirst/library/observations';
import { points, positions } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { pointNames, positionNames } from './marks.ts';

type Next = { kind: 'mark' | 'observation'; position: string | null; point: string };

const nameIn = (names: Readonly<Record<string, string>>, key: string): string => names[key] ?? key;

/** The mark or observation most worth making next, as the coach reads it. */
export const nextInWords = ({ kind, position, point }: Next): string => {
  if (kind === 'observation') return observationByKey(point)?.question ?? point;
  const name = nameIn(pointNames, point);
  return position === null ? name : `${name}, ${nameIn(positionNames, position)}`;
};

/** The place of a mark that is worth making next; null for an observation. */
export const placeOfNext = ({ kind, position, point }: Next): Place | null => {
  const at = positions.find((one) => one === position);
  const what = points.find((one) => one === point);
  return kind === 'mark' && at !== undefined && what !== undefined ? { position: at, point: what } : null;
};
