import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { drawInChild } from '@ballfirst/media/child/child';
import { beginStills } from '@ballfirst/services/stills/begin-stills';
import { finishStills } from '@ballfirst/services/stills/finish-stills';
import type { JobGiven } from './job.ts';
import { mediaChildEntry } from './media-child-entry.ts';

/**
 * Draws the pictures of a reply in the child with its limits and keeps them. A run that was cut off is done again over
 * the same files; only one writes that they are there.
 */
export const drawReply = async (
  { contextOf, resources, signal }: JobGiven,
  academyId: string,
  replyId: string,
): Promise<void> => {
  const ctx = contextOf(academyId);
  const { blobs } = resources;
  const begun = await beginStills({ ctx, input: { replyId } });
  if (begun === null) return;
  const lying = await Promise.all(
    begun.stills.map(async (still) => ((await blobs.size(still.from)) === null ? [] : [still])),
  );
  const wanted = lying.flat();
  const [first] = wanted;
  let made: readonly string[] = [];
  if (first !== undefined) {
    const outFolder = path.join(path.dirname(blobs.localPath(first.from)), `stills-${replyId}`);
    try {
      const stills = [];
      for (const { index, from, frame, marks, lines } of wanted) {
        const sourcePath = await blobs.fetch(from);
        stills.push({ sourcePath, frame, marks, lines, file: `${index}.jpg` });
      }
      made = await drawInChild({ ...mediaChildEntry(), stills, outFolder, signal });
      for (const { index, to } of wanted) {
        const file = `${index}.jpg`;
        if (made.includes(file)) await blobs.put(to, await readFile(path.join(outFolder, file)));
      }
    } finally {
      for (const from of new Set(wanted.map((still) => still.from))) await blobs.release(from);
      await rm(outFolder, { recursive: true, force: true });
    }
  }
  const input = { replyId, version: begun.version, made: made.length };
  await finishStills({ ctx, input });
};
