import { expiredUploads } from '@ballfirst/db/crossings/expired-uploads';
import { unpreparedClips } from '@ballfirst/db/crossings/unprepared-clips';
import { noteArrived } from '@ballfirst/services/clips/note-arrived';
import { tickJob } from '../tick-job.ts';
import { prepareClip } from './prepare-clip.ts';

/** A clip still waiting after this long has lost its job. */
const olderThanSeconds = 120;

/** Refills the queue from the database: losing the queue loses nothing. */
export const reconcileClips = tickJob({
  name: 'reconcile-clips',
  queue: 'nightly',
  handle: async ({ resources, queues, contextOf }) => {
    const now = resources.clock.now();
    const lost = await unpreparedClips(resources.db, { now, olderThanSeconds, limit: 100 });
    // Those that have not run out of time yet, all of them: they may go on for two days.
    const open = await expiredUploads(resources.db, {
      now: new Date(now.getTime() + 72 * 3_600_000),
      limit: 1000,
    });
    for (const { academyId, clipId } of open)
      await noteArrived({ ctx: contextOf(academyId), input: { clipId } });
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
