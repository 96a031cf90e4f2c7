import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import { chooseTranscoder } from '../choose-transcoder.ts';
import { readFrameTable } from '../header/frame-times.ts';
import { lookAt } from './look-at.ts';

/**
 * Says where to look first in a rendition that was made before this was asked, and makes its strip of film.
 *
 * @throws Error for trouble of our own: worth another try
 */
export async function lookAgain(request: {
  readonly sourcePath: string;
  /** Made when missing; holds `strip.jpg` afterwards. */
  readonly outFolder: string;
}): Promise<Suggestion> {
  const transcoder = await chooseTranscoder();
  const table = await readFrameTable(request.sourcePath);
  const { suggestion, strip } = await lookAt(transcoder, request.sourcePath, table);
  await mkdir(request.outFolder, { recursive: true });
  await writeFile(join(request.outFolder, 'strip.jpg'), strip);
  return suggestion;
}
