import type { TestProject } from 'vitest/node';
import { type DemoFile, runningService, type Service, startService } from './service.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    service: { url: string; home: string; demo: DemoFile };
  }
}

/**
 * One running service for all journeys. While writing one, JOURNEY_HOME names the data folder of a service that runs
 * already (started with CLOCK_OFFSET_FILE in that folder and TICK_MS=1000) and is left as it is.
 */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const service: Service = process.env.JOURNEY_HOME
    ? await runningService(process.env.JOURNEY_HOME)
    : await startService();
  project.provide('service', { url: service.url, home: service.home, demo: service.demo });
  return () => service.stop();
}
