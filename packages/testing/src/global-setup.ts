import type { TestProject } from 'vitest/node';
import { startEmbeddedServer, type TestServer } from './embedded-server.ts';
import { dropTemplate, makeTemplate } from './make-template.ts';
import './provided.ts';

/** A server that was given is left as it was found; one of our own goes with all that is in it. */
const givenServer = (superuserUrl: string): TestServer => ({ superuserUrl, stop: async () => undefined });

/**
 * One PostgreSQL and one migrated template for the whole run. `TEST_DATABASE_SUPERUSER_URL` names a server that runs
 * already (any version from 15 on); otherwise an embedded one is started and stopped here.
 */
export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const given = process.env.TEST_DATABASE_SUPERUSER_URL;
  const server = given ? givenServer(given) : await startEmbeddedServer();
  try {
    const template = await makeTemplate(server.superuserUrl);
    project.provide('ballfirstDatabase', { superuserUrl: server.superuserUrl, template });
    return async () => {
      if (given) await dropTemplate(server.superuserUrl, template);
      await server.stop();
    };
  } catch (error) {
    await server.stop();
    throw error;
  }
}
