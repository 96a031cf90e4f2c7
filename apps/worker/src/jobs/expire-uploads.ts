import { expiredUploads } from '@ballfirst/db/crossings/expired-uploads';
import { expireClip } from '@ballfirst/services/clips/expire-clip';
import { noteArrived } from '@ballfirst/services/clips/note-arrived';
import { tickJob } from '../tick-job.ts';

/** Uploads that never arrived in full are given up and their bytes removed. */
export const expireUploads = tickJob({
  name: 'expire-uploads',
  queue: 'nightly',
  handle: async ({ resources, contextOf }) => {
    for (const { academyId, clipId } of await expiredUploads(resources.db, {
      now: resources.clock.now(),
      limit: 200,
    })) {
      const call = { ctx: contextOf(academyId), input: { clipId } };
      const { arrived } = await noteArrived(call);
      if (!arrived) await expireClip(call);
    }
  },
});
