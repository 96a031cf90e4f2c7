import { unpreparedClips } from '@ballfirst/db/crossings/unprepared-clips';
import { tickJob } from '../tick-job.ts';
import { prepareClip } from './prepare-clip.ts';

/** A clip still waiting after this long has lost its job. */
const olderThanSeconds = 120;

/** Refills the queue from the database: losing the queue loses nothing. */
export const reconcileClips = tickJob({
  name: 'reconcile-clips',
  queue: 'nightly',
  handle: async ({ resources, queues }) => {
    const now = resources.clock.now();
    const lost = await unpreparedClips(resources.db, { now, olderThanSeconds, limit: 100 });
    await queues.add(
      lost.map(({ academyId, clipId, fence }) => ({
        job: prepareClip,
        // The clip's own id stands for the event that was lost; the fence makes each try a job of its own.
        data: { id: clipId, academyId, payload: { clipId } },
        id: `${clipId}.again-${fence}.${prepareClip.name}`,
      })),
    );
  },
});
