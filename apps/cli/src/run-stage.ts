import { spawn } from 'node:child_process';

export type Stage = {
  readonly name: string;
  /** Node script and arguments, from the project's root. */
  readonly args: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
};

export type StageResult = { readonly name: string; readonly isGood: boolean; readonly seconds: number };

/** Runs one check and shows its words as they come. */
export function runStage(root: string, stage: Stage): Promise<StageResult> {
  const begun = performance.now();
  const child = spawn(process.execPath, stage.args, {
    cwd: root,
    env: { ...process.env, ...stage.env },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return new Promise((resolve) => {
    const end = (isGood: boolean) =>
      resolve({ name: stage.name, isGood, seconds: (performance.now() - begun) / 1000 });
    child.on('error', () => end(false));
    child.on('exit', (code) => end(code === 0));
  });
}
