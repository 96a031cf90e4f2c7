import { ProblemError } from '@ballfirst/contracts/problems';
import { SwingLength, View } from '@ballfirst/contracts/words';
import { clipBytesAtMost, type NewClip } from '@ballfirst/services/clips/start-clip';
import { Metadata } from '@tus/utils';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';

const Told = z.object({
  filename: z.string().trim().min(1, 'The file has no name.').max(200),
  view: View,
  swingLength: SwingLength,
  /** What the phone thinks it is: the true kind is found when the clip is prepared. */
  filetype: z.string().max(100).optional(),
});

const metadataOf = (header: unknown): Record<string, string | null> => {
  try {
    return Metadata.parse(typeof header === 'string' ? header : undefined);
  } catch {
    throw new ProblemError('bad-request', 'Upload-Metadata is not in the form of tus 1.0.');
  }
};

/** What a POST to /uploads says of its file. @throws ProblemError bad-request, too-large */
export const newUploadOf = (request: FastifyRequest): NewClip => {
  const length = request.headers['upload-length'];
  if (typeof length !== 'string' || !/^\d{1,15}$/.test(length)) {
    throw new ProblemError('bad-request', 'Say how long the file is (Upload-Length).');
  }
  const lengthBytes = Number(length);
  if (lengthBytes > clipBytesAtMost) throw new ProblemError('too-large');
  const told = Told.safeParse(metadataOf(request.headers['upload-metadata']));
  if (!told.success) {
    const fields = told.error.issues.map((it) => ({ path: it.path.join('.'), message: it.message }));
    throw new ProblemError(
      'bad-request',
      'Say what the video shows: filename, view and swingLength.',
      fields,
    );
  }
  const { filename, view, swingLength } = told.data;
  return { fileName: filename, view, swingLength, lengthBytes };
};
