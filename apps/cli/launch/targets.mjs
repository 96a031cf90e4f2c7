import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { runQuietly } from './run-quietly.mjs';
import { closureFolders, readWorkspaces } from './workspaces.mjs';

/**
 * @typedef {object} Target something that is built from sources when they changed
 * @property {string} name said while it is built
 * @property {string[]} inputs files and folders whose content decides
 * @property {string} output must exist, or the target is stale
 * @property {string} record where the hash of the inputs of the last build stands
 * @property {() => Promise<void>} make
 */

/**
 * @param {string} root
 * @returns {Record<'client' | 'cli' | 'api' | 'worker' | 'site', Target>} in the order they must be built
 */
export function describeTargets(root) {
  const workspaces = readWorkspaces(root);
  const lock = join(root, 'package-lock.json');
  const launch = join(root, 'apps', 'cli', 'launch');

  /**
   * @param {string} app
   * @param {Record<string, string>} entries
   * @returns {Target}
   */
  const bundled = (app, entries) => {
    const outdir = join(root, 'apps', app, 'dist');
    return {
      name: app,
      inputs: [lock, launch, join(root, 'prisma'), ...closureFolders(workspaces, `@ballfirst/${app}`)],
      output: join(outdir, 'main.mjs'),
      record: join(outdir, '.inputs'),
      make: async () => {
        rmSync(outdir, { recursive: true, force: true });
        const present = Object.entries(entries).filter(([, file]) => existsSync(join(root, file)));
        await bundle(root, { workspaces, entries: Object.fromEntries(present), outdir });
      },
    };
  };

  const generated = join(root, 'packages', 'db', 'src', 'generated');
  const site = join(root, 'apps', 'site');
  return {
    client: {
      name: 'database client',
      inputs: [lock, join(root, 'prisma', 'schema.prisma'), join(root, 'prisma.config.ts')],
      output: join(generated, 'client.ts'),
      record: join(generated, '.inputs'),
      make: () =>
        runQuietly(
          root,
          [join(root, 'node_modules', 'prisma', 'build', 'index.js'), 'generate', '--no-hints'],
          {
            CHECKPOINT_DISABLE: '1',
            PRISMA_HIDE_UPDATE_MESSAGE: '1',
          },
        ),
    },
    cli: bundled('cli', {
      main: 'apps/cli/src/main.ts',
      'tally-reporter': 'apps/cli/src/test-run/tally-reporter.ts',
      'watch-parent': 'apps/cli/src/supervise/watch-parent.ts',
    }),
    api: bundled('api', { main: 'apps/api/src/main.ts' }),
    worker: bundled('worker', {
      main: 'apps/worker/src/main.ts',
      'media-child': 'apps/worker/src/media-child.ts',
    }),
    site: {
      name: 'site',
      inputs: [lock, join(root, 'tsconfig.base.json'), ...closureFolders(workspaces, '@ballfirst/site')],
      output: join(site, '.next', 'BUILD_ID'),
      record: join(site, '.next', '.inputs'),
      make: () =>
        runQuietly(site, [join(root, 'node_modules', 'next', 'dist', 'bin', 'next'), 'build'], {
          NEXT_TELEMETRY_DISABLED: '1',
          NODE_ENV: 'production',
        }),
    },
  };
}
