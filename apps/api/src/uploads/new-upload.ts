import { ProblemError } from '@ballfirst/contracts/problems';
import { SwingLength, View } from '@ballfirst/contracts/words';
import { clipBytesAtMost, type NewClip } from '@ballfirst/services/clips/start-clip';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { metadataIn } from './upload-metadata.ts';

const file = {
  filename: z.string().trim().min(1, 'The file has no name.').max(200),
  /** What the phone thinks it is: the true kind is found when the file is prepared. */
  filetype: z.string().max(100).optional(),
};
const Told = z.discriminatedUnion('view', [
  z.object({ ...file, view: View, swingLength: SwingLength }),
  z.object({ ...file, view: z.literal('grip-photo'), swingLength: z.literal('none').default('none') }),
]);

/** Phones name some files by no kind at all; what is named otherwise need not be sent first to be refused. */
const mayBe = (wanted: 'video' | 'image', kind = ''): boolean =>
  kind === '' || kind.startsWith(`${wanted}/`) || kind === 'application/octet-stream';

/** What a POST to /uploads says of its file. @throws ProblemError bad-request, too-large, not-a-video, not-a-photo */
export const newUploadOf = (request: FastifyRequest): NewClip => {
  const length = request.headers['upload-length'];
  if (typeof length !== 'string' || !/^\d{1,15}$/.test(length)) {
    throw new ProblemError('bad-request', 'Say how long the file is (Upload-Length).');
  }
  const lengthBytes = Number(length);
  if (lengthBytes > clipBytesAtMost) throw new ProblemError('too-large');
  const told = Told.safeParse(metadataIn(request.headers['upload-metadata']));
  if (!told.success) {
    const fields = told.error.issues.map((it) => ({ path: it.path.join('.'), message: it.message }));
    throw new ProblemError('bad-request', 'Say what the file shows: filename, view and swingLength.', fields);
  }
  const { filename, filetype, ...shown } = told.data;
  if (shown.view === 'grip-photo') {
    if (!mayBe('image', filetype)) throw new ProblemError('not-a-photo');
  } else if (!mayBe('video', filetype)) throw new ProblemError('not-a-video');
  return { fileName: filename, ...shown, lengthBytes };
};
