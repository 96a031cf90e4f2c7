import type { Point, Position } from './marks.ts';
import type { Place } from './place.ts';

const names = new Set<Point>(['hip-middle', 'neck-base']);

/** A point as one would say it: "lead ankle"; hip-middle and neck-base are names and keep their stroke. */
export const pointInWords = (point: Point): string => (names.has(point) ? point : point.replaceAll('-', ' '));

export const positionInWords = (position: Position): string => position.replaceAll('-', ' ');

/** What is missing, in words: "lead ankle is not marked at top". */
export const notMarked = ({ position, point }: Place): string =>
  `${pointInWords(point)} is not marked at ${positionInWords(position)}`;
