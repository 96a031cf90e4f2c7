import { clipsNotLookedAt } from '@ballfirst/db/crossings/clips-not-looked-at';
import { tickJob } from '../tick-job.ts';
import { lookAtClip } from './look-at-clip.ts';

/** So few at a time that a clip which somebody waits for comes between them. */
const atOnce = 6;

/** Finds clips that nobody has looked at, and has them looked at. */
export const reconcileLooks = tickJob({
  name: 'reconcile-looks',
  queue: 'nightly',
  handle: async ({ resources, queues }) => {
    const lacking = await clipsNotLookedAt(resources.db, { limit: atOnce });
    await queues.add(
      lacking.map(({ academyId, clipId }) => ({
        job: lookAtClip,
        data: { academyId, clipId },
        id: `${clipId}.${lookAtClip.name}`,
      })),
    );
  },
});
