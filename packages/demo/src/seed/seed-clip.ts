import { framesKey, photoKey, posterKey, renditionKey, stripKey } from '@ballfirst/services/clips/keys';
import type { Blobs } from '@ballfirst/services/ports';
import { gripSize } from '../golfer/grip-size.ts';
import type { Truth } from '../golfer/truth.ts';
import type { Member } from './at-time.ts';
import { clipRows, photoRows } from './clip-rows.ts';
import type { KeptFiles } from './kept-files.ts';
import type { Past } from './past.ts';

type Filmed = { readonly kept: KeptFiles; readonly at: Date; readonly refused?: string };

/** One clip, uploaded and prepared (or refused), with its files. @returns its id */
export const seedClip = async (
  past: Past,
  blobs: Blobs,
  student: Member,
  { kept, ...filmed }: Filmed,
): Promise<string> => {
  const { mp4, truth, poster, look } = kept;
  const { suggestion } = look;
  const { clip, audit } = clipRows(student, { mp4, truth, suggestion, ...filmed });
  const of = { academyId: student.academyId, clipId: clip.id };
  if (filmed.refused === undefined) {
    await Promise.all([
      blobs.put(renditionKey(of), mp4),
      blobs.put(posterKey(of), poster),
      blobs.put(stripKey(of), look.strip),
      blobs.put(framesKey(of), Buffer.from(frameTable(truth))),
    ]);
  }
  await past.tx.clip.createMany({ data: [clip] });
  await past.tx.auditEntry.createMany({ data: audit });
  return clip.id;
};

const frameTable = ({ width, height, frames, fps }: Truth): string => {
  const timesS = Array.from({ length: frames }, (_, frame) => Math.round((frame / fps) * 1e6) / 1e6);
  return JSON.stringify({ width, height, timesS });
};

/** One photo of the grip, uploaded and prepared, with its file. @returns its id */
export const seedPhoto = async (
  past: Past,
  blobs: Blobs,
  student: Member,
  { jpeg, at }: { readonly jpeg: Buffer; readonly at: Date },
): Promise<string> => {
  const { clip, audit } = photoRows(student, { jpeg, at, size: gripSize });
  await blobs.put(photoKey({ academyId: student.academyId, clipId: clip.id }), jpeg);
  await past.tx.clip.createMany({ data: [clip] });
  await past.tx.auditEntry.createMany({ data: audit });
  return clip.id;
};
