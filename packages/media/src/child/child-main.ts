import { writeSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { createInterface } from 'node:readline';
import { lookAgain } from '../look/look-again.ts';
import { prepareClip } from '../prepare.ts';
import { preparePhoto } from '../prepare-photo.ts';
import { drawStills } from '../stills/draw-stills.ts';
import type { ChildJob, ChildResult, ChildWord } from './child-words.ts';

// Entry of the process that opens untrusted video: importing this file runs it. One job, then the end.
const say = (word: ChildWord): void => {
  writeSync(1, `${JSON.stringify(word)}\n`);
};

const lines = createInterface({ input: process.stdin });
lines.once('line', (line) => {
  // The parent holds the other end of the input: when it goes, so do we.
  lines.once('close', endWithTools);
  const job = JSON.parse(line) as ChildJob;
  workOn(job)
    .then(
      (done) => say({ done }),
      (error: unknown) => say({ failed: error instanceof Error ? error.message : String(error) }),
    )
    .finally(() => process.exit(0));
});

function workOn(job: ChildJob): Promise<ChildResult[ChildJob['kind']]> {
  if (job.kind === 'photo') return preparePhoto(job);
  // Nobody waits for these: what somebody waits for goes first.
  if (job.kind !== 'prepare') setPriority(constants.priority.PRIORITY_LOW);
  if (job.kind === 'stills') return drawStills(job);
  if (job.kind === 'look') return lookAgain(job);
  return prepareClip({ ...job, onProgress: (percent) => say({ percent }) });
}

/** Ends this process and, where it leads a group, the tools it started. */
function endWithTools(): void {
  try {
    process.kill(-process.pid, 'SIGKILL');
  } catch {
    process.exit(1);
  }
}
