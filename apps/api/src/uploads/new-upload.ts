import { ProblemError } from '@ballfirst/contracts/problems';
import { SwingLength, View } from '@ballfirst/contracts/words';
import { clipBytesAtMost, type NewClip } from '@ballfirst/services/clips/start-clip';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { metadataIn } from './upload-metadata.ts';

const Told = z.object({
  filename: z.string().trim().min(1, 'The file has no name.').max(200),
  view: View,
  swingLength: SwingLength,
  /** What the phone thinks it is: the true kind is found when the clip is prepared. */
  filetype: z.string().max(100).optional(),
});

/** Phones name some videos by no kind at all; what is named otherwise need not be sent first to be refused. */
const mayBeVideo = (kind = ''): boolean =>
  kind === '' || kind.startsWith('video/') || kind === 'application/octet-stream';

/** What a POST to /uploads says of its file. @throws ProblemError bad-request, too-large, not-a-video */
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
    throw new ProblemError(
      'bad-request',
      'Say what the video shows: filename, view and swingLength.',
      fields,
    );
  }
  const { filename, view, swingLength, filetype } = told.data;
  if (!mayBeVideo(filetype)) throw new ProblemError('not-a-video');
  return { fileName: filename, view, swingLength, lengthBytes };
};
