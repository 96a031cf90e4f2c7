import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

type Truth = {
  hand: 'right' | 'left';
  cause: string;
  frames: number;
  width: number;
  height: number;
  positions: Record<string, number>;
  points: Record<string, Record<string, [number, number]>>;
  /** By the keys of the measurements, in their units. */
  measures: Record<string, number>;
};

const folder = new URL('../../packages/demo/clips/', import.meta.url);
export const clipFile = (id: string): string => fileURLToPath(new URL(`${id}.mp4`, folder));
export const clipTruth = (id: string): Truth =>
  JSON.parse(readFileSync(new URL(`truth/${id}.json`, folder), 'utf8')) as Truth;

/** The twelve marks of the first pass for fat shots, by their words on the screen, in the order the review asks for. */
export const fatMarks = [
  ['address', 'ball'],
  ['address', 'lead-ankle'],
  ['address', 'trail-ankle'],
  ['address', 'hip-middle'],
  ['address', 'head-centre'],
  ['address', 'grip-end'],
  ['top', 'hip-middle'],
  ['top', 'head-centre'],
  ['lead-arm-parallel-down', 'hip-middle'],
  ['lead-arm-parallel-down', 'head-centre'],
  ['shaft-parallel-down', 'grip-end'],
  ['finish', 'hip-middle'],
] as const;
