import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { Suggestion } from '@ballfirst/contracts/http/submissions';
import { z } from 'zod';
import type { KeptTrail } from '../golfer/kept-clips.ts';
import type { Truth } from '../golfer/truth.ts';

/** What lies in `clips/look/` of a clip: the hashes of both files, and where to look first. */
export const KeptLook = z.object({ clip: z.string(), strip: z.string(), suggestion: Suggestion });

/** A kept clip as it lies in `clips/`: rendered the way the worker would prepare it, with its poster and truth. */
export type KeptFiles = {
  readonly mp4: Buffer;
  readonly poster: Buffer;
  readonly truth: Truth;
  /** The clubhead near the ball, face-on; else none. */
  readonly trail: KeptTrail;
  /** What the machine says of it, looked up beforehand, with its strip of film. */
  readonly look: { readonly suggestion: Suggestion; readonly strip: Buffer };
};

/** The first clip of a list that is kept. @throws RangeError where none is */
export const firstKept = (folder: string, ids: readonly string[]): string => {
  const found = ids.find((id) => existsSync(path.join(folder, `${id}.mp4`)));
  if (found === undefined) throw new RangeError(`None of these clips is kept: ${ids.join(', ')}.`);
  return found;
};

const readLook = async (folder: string, id: string): Promise<KeptFiles['look']> => ({
  suggestion: KeptLook.parse(JSON.parse(await readFile(path.join(folder, 'look', `${id}.json`), 'utf8')))
    .suggestion,
  strip: await readFile(path.join(folder, 'look', `${id}.jpg`)),
});

const readTrail = async (folder: string, id: string): Promise<KeptTrail> => {
  const file = path.join(folder, 'trail', `${id}.json`);
  return existsSync(file) ? (JSON.parse(await readFile(file, 'utf8')) as KeptTrail) : [];
};

export const readKept = async (folder: string, id: string): Promise<KeptFiles> => ({
  mp4: await readFile(path.join(folder, `${id}.mp4`)),
  poster: await readFile(path.join(folder, `${id}.jpg`)),
  truth: JSON.parse(await readFile(path.join(folder, 'truth', `${id}.json`), 'utf8')) as Truth,
  trail: await readTrail(folder, id),
  look: await readLook(folder, id),
});

/** A drawn photo of a grip, as it lies in `clips/grip/`. */
export const readGrip = (folder: string, id: string): Promise<Buffer> =>
  readFile(path.join(folder, 'grip', `${id}.jpg`));
