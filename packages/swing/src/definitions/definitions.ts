import type { Definition } from './definition.ts';
import { definitionsDownTheLine } from './definitions-down-the-line.ts';
import { definitionsFaceOn } from './definitions-face-on.ts';

/** Every measurement of marks that this package makes, in both views; the tempo is counted in `tempo.ts`. */
export const definitions: readonly Definition[] = [...definitionsFaceOn, ...definitionsDownTheLine];
