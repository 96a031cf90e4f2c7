import { readFile, rm } from 'node:fs/promises';
import path from 'node:path';
import { Id } from '@ballfirst/contracts/words';
import { lookInChild } from '@ballfirst/media/child/child';
import { eraseClip } from '@ballfirst/services/clips/erase-clip';
import { renditionKey, stripKey } from '@ballfirst/services/clips/keys';
import { noteSuggestion } from '@ballfirst/services/clips/note-suggestion';
import { z } from 'zod';
import type { Job } from '../job.ts';
import { mediaChildEntry } from '../media-child-entry.ts';

const Of = z.object({ academyId: Id, clipId: Id });

/** Where nothing can be looked at. */
const nothing = { impact: null, window: null, strip: [] };

/** Looks again at a clip that was prepared before the machine said where to look first. */
export const lookAtClip: Job = {
  name: 'look-at-clip',
  queue: 'media',
  schema: Of,
  handle: async ({ contextOf, resources, signal }, data) => {
    const { academyId, clipId } = Of.parse(data);
    const ctx = contextOf(academyId);
    const { blobs } = resources;
    const of = { academyId, clipId };
    const rendition = renditionKey(of);
    if ((await blobs.size(rendition)) === null) {
      await noteSuggestion({ ctx, input: { clipId, suggestion: nothing } });
      return;
    }
    const outFolder = path.join(path.dirname(blobs.localPath(rendition)), 'look');
    try {
      const sourcePath = await blobs.fetch(rendition);
      const suggestion = await lookInChild({ ...mediaChildEntry(), sourcePath, outFolder, signal });
      await blobs.put(stripKey(of), await readFile(path.join(outFolder, 'strip.jpg')));
      const { noted } = await noteSuggestion({ ctx, input: { clipId, suggestion } });
      if (!noted) await eraseClip({ ctx, input: { clipId } });
    } finally {
      await blobs.release(rendition);
      await rm(outFolder, { recursive: true, force: true });
    }
  },
};
