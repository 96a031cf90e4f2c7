import { releaseLock } from '../home/lock.ts';
import type { Service } from './service.ts';
import type { StopRequest } from './stop-request.ts';

const deadlineMs = 30_000;

/**
 * Stops what runs, in order: the door drains, the worker hands back its jobs, then the site, then the database.
 * After the deadline, or on a second Ctrl-C, it waits for nobody: the parts notice that we are gone, and the keeper
 * ends the database.
 */
export async function closeService(service: Service, stop: StopRequest): Promise<void> {
  service.isStopping = true;
  const atOnce = () => process.exit(1);
  stop.onImpatience(atOnce);
  const deadline = setTimeout(atOnce, deadlineMs);
  await service.history?.stop();
  await service.api?.stop(12_000);
  await service.worker?.stop(12_000);
  await service.site?.stop(2_000);
  await service.server?.stop();
  service.keeper?.dismiss();
  if (service.lock !== undefined) releaseLock(service.lock);
  clearTimeout(deadline);
}
