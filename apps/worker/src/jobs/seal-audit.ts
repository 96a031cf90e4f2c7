import { academiesToSeal } from '@ballfirst/db/crossings/academies-to-seal';
import { sealAcademy } from '@ballfirst/services/audit/seal-academy';
import { tickJob } from '../tick-job.ts';

/** Chains what was written since the last time, academy by academy. */
export const sealAudit = tickJob({
  name: 'seal-audit',
  queue: 'nightly',
  handle: async ({ resources, contextOf }) => {
    for (const academyId of await academiesToSeal(resources.db, { now: resources.clock.now() })) {
      await sealAcademy({ ctx: contextOf(academyId) });
    }
  },
});
