import type { Point, Position } from './marks.ts';

/** Which point at which moment: where a mark goes. */
export type Place = { readonly position: Position; readonly point: Point };

/** Faults that have a first pass: all that a coach may name, and the two scatters. */
export type FirstPassFault =
  | 'fat'
  | 'thin'
  | 'topped'
  | 'slice'
  | 'hook'
  | 'push'
  | 'pull'
  | 'shank'
  | 'heel'
  | 'toe'
  | 'sky'
  | 'low-point-scatter'
  | 'face-scatter';
