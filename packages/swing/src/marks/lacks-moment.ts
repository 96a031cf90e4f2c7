import type { Definition } from '../definitions/definition.ts';
import type { Position, SwingLength } from './marks.ts';

const onlyInLongSwings = new Set<Position>(['lead-arm-parallel-back', 'top', 'lead-arm-parallel-down']);

/** Whether a swing of this length has no such moment: below three-quarter there is no top. */
export const lacksPosition = (position: Position, swingLength: SwingLength): boolean =>
  swingLength !== 'three-quarter' && swingLength !== 'full' && onlyInLongSwings.has(position);

/** Whether a definition reads a moment that a swing of this length does not have. */
export const lacksMoment = (definition: Definition, swingLength: SwingLength): boolean =>
  definition.positions.some((position) => lacksPosition(position, swingLength));
