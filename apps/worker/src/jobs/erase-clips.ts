import { clipsToErase } from '@ballfirst/db/crossings/clips-to-erase';
import { eraseClip } from '@ballfirst/services/clips/erase-clip';
import { tickJob } from '../tick-job.ts';

/** Files of clips whose consent was withdrawn go; a file that cannot be removed now is tried again at the next tick. */
export const eraseClips = tickJob({
  name: 'erase-clips',
  queue: 'prompt',
  handle: async ({ resources, contextOf }) => {
    const due = await clipsToErase(resources.db, { now: resources.clock.now(), limit: 200 });
    for (const { academyId, clipId } of due) {
      await eraseClip({ ctx: contextOf(academyId), input: { clipId } }).catch((error: unknown) =>
        resources.log.error({ clipId, error: String(error) }, 'a clip was not erased and is tried again'),
      );
    }
  },
});
