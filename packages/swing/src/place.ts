import type { Point, Position } from './marks.ts';

/** Which point at which moment: where a mark goes. */
export type Place = { readonly position: Position; readonly point: Point };

/** Faults that have a first pass face-on. */
export type FirstPassFault = 'fat' | 'thin' | 'topped';
