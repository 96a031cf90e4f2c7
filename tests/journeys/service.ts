import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as after } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

export type DemoFile = {
  url: string;
  academies: {
    id: string;
    slug: string;
    name: string;
    people: { role: string; name: string; email: string; password: string }[];
  }[];
};
export type Service = {
  readonly url: string;
  readonly home: string;
  readonly demo: DemoFile;
  stop(): Promise<void>;
};

const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  if (address === null || typeof address === 'string') throw new Error('There is no free port.');
  return address.port;
};

/** Starts the whole service as a person does, in a folder of its own, with a clock that tests may move. */
export const startService = async (): Promise<Service> => {
  const home = await mkdtemp(path.join(tmpdir(), 'ballfirst-journeys-'));
  const port = await freePort();
  const child = spawn(process.execPath, [path.join(root, 'apps/cli/launch.mjs'), 'start'], {
    cwd: root,
    env: {
      ...process.env,
      BALLFIRST_HOME: home,
      PORT: String(port),
      CLOCK_OFFSET_FILE: path.join(home, 'clock-offset'),
      TICK_MS: '1000',
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said: string[] = [];
  const url = await readyAddress(child, said);
  const demo = JSON.parse(await readFile(path.join(home, 'demo.json'), 'utf8')) as DemoFile;
  return {
    url,
    home,
    demo,
    stop: async () => {
      const gone = once(child, 'exit');
      child.kill('SIGTERM');
      await gone;
      await rm(home, { recursive: true, force: true });
    },
  };
};

/** A service that somebody else started. */
export const runningService = async (home: string): Promise<Service> => {
  const demo = JSON.parse(await readFile(path.join(home, 'demo.json'), 'utf8')) as DemoFile;
  return { url: demo.url, home, demo, stop: async () => undefined };
};

const readyAddress = (child: ChildProcess, said: string[]): Promise<string> =>
  new Promise((resolve, reject) => {
    const hear = (line: string): void => {
      said.push(line);
      const ready = /^ready (http:\/\/\S+)/.exec(line);
      if (ready?.[1]) resolve(ready[1]);
    };
    if (child.stdout) createInterface({ input: child.stdout }).on('line', hear);
    if (child.stderr) createInterface({ input: child.stderr }).on('line', hear);
    child.on('exit', () => reject(new Error(`npm start ended before it was ready:\n${said.join('\n')}`)));
  });

/** Moves the clock of the running service to so many milliseconds from now. */
export const moveClock = (home: string, offsetMs: number): Promise<void> =>
  writeFile(path.join(home, 'clock-offset'), String(Math.round(offsetMs)));

/** The ninety days of the demo are told beside the running service: waits until they are. */
export const historyTold = async (home: string): Promise<void> => {
  const file = path.join(home, 'demo-history.json');
  const isTold = async () =>
    existsSync(file) && (JSON.parse(await readFile(file, 'utf8')) as { isDone: boolean }).isDone;
  for (let waitedS = 0; !(await isTold()); waitedS += 1) {
    if (waitedS > 300) throw new Error("The demo's past was not told in five minutes.");
    await after(1000);
  }
};
