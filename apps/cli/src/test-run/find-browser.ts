import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const programs = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const macApps = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/**
 * An installed Chromium or Chrome.
 *
 * @param env CHROMIUM_PATH or CHROME_PATH names one; else PATH and the usual places are searched
 */
export function findBrowser(
  env: Readonly<Record<string, string | undefined>>,
  canRun: (path: string) => boolean = isProgram,
): string | undefined {
  const named = env.CHROMIUM_PATH || env.CHROME_PATH;
  if (named) return canRun(named) ? named : undefined;
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = programs.flatMap((program) => folders.map((folder) => join(folder, program)));
  return [...onPath, ...macApps].find(canRun);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
