import { z } from 'zod';
import { operation } from '../operation.ts';
import { ClipStatus, Id, Instant } from '../words.ts';
import { idParam } from './submissions.ts';

/** A still of the hands on the grip: it is sent the way of a clip and stands beside a swing. */
export const GripPhoto = z.object({
  id: Id,
  /** The swing it was sent with; null until then. */
  submissionId: Id.nullable(),
  status: ClipStatus,
  /** Why it cannot be used and what to do instead; null otherwise. */
  refusal: z.object({ code: z.string(), words: z.string() }).nullable(),
  /** Its size, upright; null until ready. */
  picture: z.object({ widthPx: z.number().int(), heightPx: z.number().int() }).nullable(),
  /** Address under /media, checked on every request; null until ready. */
  photo: z.string().nullable(),
  createdAt: Instant,
});

export const readGripPhoto = operation({
  id: 'readGripPhoto',
  method: 'GET',
  path: '/api/clips/{id}/grip-photo',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'A photo of the grip: how far it is, or why it was refused.',
  params: idParam,
  reply: GripPhoto,
});
export const readGripPhotoOfSwing = operation({
  id: 'readGripPhotoOfSwing',
  method: 'GET',
  path: '/api/submissions/{id}/grip-photo',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'The photo of the grip that was sent with a swing; null where there is none.',
  params: idParam,
  reply: z.object({ photo: GripPhoto.nullable() }),
});
/** Until the swing is answered; one that stood there before is removed, its files too. */
export const putGripPhoto = operation({
  id: 'putGripPhoto',
  method: 'PUT',
  path: '/api/submissions/{id}/grip-photo',
  tag: 'submissions',
  who: ['student'],
  status: 200,
  summary:
    'Put a photo of the grip beside a swing that is sent but not answered, also in place of another photo.',
  params: idParam,
  body: z.object({ photoId: Id }),
  reply: z.object({ photo: GripPhoto }),
});
