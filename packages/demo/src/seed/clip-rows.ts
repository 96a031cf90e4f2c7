import { createHash } from 'node:crypto';
import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import type { Prisma } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import type { Truth } from '../golfer/truth.ts';
import type { Member } from './at-time.ts';

/** How long an upload may go on, as `startClip` has it. */
const uploadHours = 48;

export type Filmed = {
  readonly mp4: Buffer;
  readonly truth: Pick<Truth, 'view' | 'width' | 'height' | 'frames' | 'fps'>;
  readonly at: Date;
  /** Where to look first, as preparing says it. */
  readonly suggestion: Suggestion;
  /** The code of the reason where the machine refused it. */
  readonly refused?: string;
};

export type FilmedPhoto = {
  readonly jpeg: Buffer;
  readonly at: Date;
  readonly size: { readonly widthPx: number; readonly heightPx: number };
};

/**
 * The rows that a clip leaves behind which was uploaded and prepared (or refused): what `startClip`, `finishClip`,
 * `beginPreparing` and `finishPreparing` write, in a fifth of the time. A test holds them against the verbs.
 */
export const clipRows = (student: Member, { mp4, truth, at, suggestion, refused }: Filmed) => {
  const { academyId, studentId } = student;
  const { width, height, frames, fps } = truth;
  const id = newId();
  const outcome = refused === undefined ? 'ready' : 'refused';
  const clip: Prisma.ClipUncheckedCreateInput = {
    ...{ academyId, id, studentId: studentId ?? '', fileName: 'swing.mp4', view: truth.view },
    ...{ swingLength: 'full', status: outcome, lengthBytes: BigInt(mp4.length), fence: 1, marksVersion: 0 },
    ...{ createdAt: at, startedAt: at, expiresAt: new Date(at.getTime() + uploadHours * 3_600_000) },
    ...(refused === undefined
      ? {
          ...{ percent: 100, widthPx: width, heightPx: height, frames, fps },
          durationMs: Math.round((frames / fps) * 1000),
          suggestion,
          sha256: createHash('sha256').update(mp4).digest('hex'),
        }
      : { percent: 0, refusal: refused }),
  };
  return { clip, audit: auditOf(student, { id, at, bytes: mp4.length, outcome }) };
};

/** The rows of a photo of the grip that was uploaded and prepared, and is not sent with a swing yet. */
export const photoRows = (student: Member, { jpeg, at, size }: FilmedPhoto) => {
  const { academyId, studentId } = student;
  const id = newId();
  const clip: Prisma.ClipUncheckedCreateInput = {
    ...{ academyId, id, studentId: studentId ?? '', fileName: 'grip.jpg', view: 'grip-photo' },
    ...{ swingLength: 'none', status: 'ready', lengthBytes: BigInt(jpeg.length), fence: 1, marksVersion: 0 },
    ...{ createdAt: at, startedAt: at, expiresAt: new Date(at.getTime() + uploadHours * 3_600_000) },
    ...{ percent: 100, ...size, suggestion: { impact: null, window: null, strip: [] } },
    sha256: createHash('sha256').update(jpeg).digest('hex'),
  };
  return { clip, audit: auditOf(student, { id, at, bytes: jpeg.length, outcome: 'photo' }) };
};

type Came = { id: string; at: Date; bytes: number; outcome: 'ready' | 'refused' | 'photo' };
const auditOf = ({ academyId, membershipId }: Member, { id, at, bytes, outcome }: Came) => {
  const line = (actor: string, action: string, detail: Prisma.InputJsonObject) => ({
    ...{ academyId, id: newId(), at, actor, action, subject: `clip:${id}`, detail, requestId: 'demo' },
  });
  return [
    line(`membership:${membershipId}`, 'start-clip', { lengthBytes: bytes }),
    line(`membership:${membershipId}`, 'finish-clip', {}),
    line('system:demo', 'prepare-clip', { outcome }),
  ] satisfies Prisma.AuditEntryCreateManyInput[];
};
