import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Sentence } from './say.mjs';

/**
 * Resolves `@ballfirst/swing/marks` to the TypeScript source, so the bundle holds our code and nothing else.
 * @param {Map<string, import('./workspaces.mjs').Workspace>} workspaces
 * @returns {import('esbuild').Plugin}
 */
function ourSources(workspaces) {
  return {
    name: 'our-sources',
    setup(build) {
      build.onResolve({ filter: /^@ballfirst\// }, ({ path }) => {
        const [scope, name, ...rest] = path.split('/');
        const folder = workspaces.get(`${scope}/${name}`)?.folder ?? '';
        const stem = join(folder, 'src', ...rest);
        const file = [`${stem}.ts`, stem].find((candidate) => existsSync(candidate));
        return file === undefined ? { errors: [{ text: `no source for ${path}` }] } : { path: file };
      });
    },
  };
}

/**
 * @param {string} root
 * @param {{ workspaces: Map<string, import('./workspaces.mjs').Workspace>, entries: Record<string, string>, outdir: string }} target
 *   `entries`: bundle name to TypeScript file
 */
export async function bundle(root, { workspaces, entries, outdir }) {
  /** @type {typeof import('esbuild')} */
  const esbuild = createRequire(join(root, 'package.json'))('esbuild');
  const built = esbuild.build({
    absWorkingDir: root,
    entryPoints: entries,
    outdir,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20.19',
    packages: 'external',
    sourcemap: 'linked',
    chunkNames: 'part-[hash]',
    logLevel: 'warning',
    plugins: [ourSources(workspaces)],
  });
  await built.catch(({ errors }) => {
    throw new Sentence(`${outdir} could not be built: ${errors.length} errors, told above.`);
  });
}
