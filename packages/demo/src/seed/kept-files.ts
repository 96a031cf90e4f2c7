import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Truth } from '../golfer/truth.ts';

/** A kept clip as it lies in `clips/`: rendered the way the worker would prepare it, with its poster and truth. */
export type KeptFiles = { readonly mp4: Buffer; readonly poster: Buffer; readonly truth: Truth };

/** The first clip of a list that is kept. @throws RangeError where none is */
export const firstKept = (folder: string, ids: readonly string[]): string => {
  const found = ids.find((id) => existsSync(path.join(folder, `${id}.mp4`)));
  if (found === undefined) throw new RangeError(`None of these clips is kept: ${ids.join(', ')}.`);
  return found;
};

export const readKept = async (folder: string, id: string): Promise<KeptFiles> => ({
  mp4: await readFile(path.join(folder, `${id}.mp4`)),
  poster: await readFile(path.join(folder, `${id}.jpg`)),
  truth: JSON.parse(await readFile(path.join(folder, 'truth', `${id}.json`), 'utf8')) as Truth,
});
