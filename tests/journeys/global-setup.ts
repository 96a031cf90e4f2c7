import type { TestProject } from 'vitest/node';
import { type DemoFile, type Service, startService } from './service.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    service: { url: string; home: string; demo: DemoFile };
  }
}

/** One running service for all journeys. */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const service: Service = await startService();
  project.provide('service', { url: service.url, home: service.home, demo: service.demo });
  return () => service.stop();
}
