import { createHash } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { lookAgain } from '@ballfirst/media/look/look-again';

// Keeps beside each demo clip what the machine says of it: where to look first, and its strip of film. `npm run looks`, after
// clips were drawn anew. The packages of the demo do not open videos themselves.
const folder = fileURLToPath(new URL('../../packages/demo/clips/', import.meta.url));
const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex');

const outFolder = await mkdtemp(path.join(tmpdir(), 'ballfirst-looks-'));
try {
  const clips = (await readdir(folder)).filter((name) => name.endsWith('.mp4')).sort();
  for (const name of clips) {
    const id = name.slice(0, -'.mp4'.length);
    const sourcePath = path.join(folder, name);
    const suggestion = await lookAgain({ sourcePath, outFolder });
    const strip = await readFile(path.join(outFolder, 'strip.jpg'));
    await writeFile(path.join(folder, 'look', `${id}.jpg`), strip);
    const look = { clip: sha256(await readFile(sourcePath)), strip: sha256(strip), suggestion };
    await writeFile(path.join(folder, 'look', `${id}.json`), `${JSON.stringify(look, null, 2)}\n`);
    console.log(`${id}: ${strip.length} bytes`);
  }
} finally {
  await rm(outFolder, { recursive: true, force: true });
}
