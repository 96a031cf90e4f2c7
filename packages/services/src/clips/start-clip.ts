import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import type { Context } from '../context.ts';
import { gripView } from '../grip-photo/grip-photo-of.ts';
import { inTransaction } from '../in-transaction.ts';
import { lockStudent } from '../students/lock-student.ts';
import { requireConsent } from '../students/require-consent.ts';
import { requireSending } from '../students/require-sending.ts';
import { type Arrival, arrivalOf } from './arrival-of.ts';
import { refusalWords } from './refusal-words.ts';

/** What the upload door knows of a file before its first byte. */
export type NewClip = {
  readonly fileName: string;
  readonly lengthBytes: number;
} & (
  | {
      readonly view: 'face-on' | 'down-the-line';
      readonly swingLength: 'rehearsal' | 'hip-high' | 'three-quarter' | 'full';
    }
  | { readonly view: typeof gripView; readonly swingLength: 'none' }
);

export const clipBytesAtMost = 500 * 1024 * 1024;
/** A photo of the grip as a phone writes it is a tenth of this. */
export const photoBytesAtMost = 20 * 1024 * 1024;
/** Of one student on their way at once: in number, and together three of the largest. */
export const unfinishedAtMost = 6;
export const studentBytesAtMost = 3 * clipBytesAtMost;
/** Of one academy on their way at once, so that one cannot fill the disk of all. */
export const academyBytesAtMost = 64 * clipBytesAtMost;
/** A range has one bar of signal: an upload may go on for two days. */
const uploadHours = 48;

/** Room promised to uploads that have not ended counts; what is given up or out of time does not. */
const requireRoom = async (
  tx: Tx,
  ctx: Context,
  { studentId, lengthBytes }: { studentId: string; lengthBytes: number },
): Promise<void> => {
  const { academyId } = ctx;
  // One start after the other within an academy: two at once would both see the last room.
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`start-clip:${academyId}`}, 0))`;
  const onTheWay = { academyId, status: 'uploading', expiresAt: { gt: ctx.resources.clock.now() } };
  const own = await tx.clip.aggregate({
    where: { ...onTheWay, studentId },
    _count: true,
    _sum: { lengthBytes: true },
  });
  const all = await tx.clip.aggregate({ where: onTheWay, _sum: { lengthBytes: true } });
  const withThis = (sum: bigint | null) => Number(sum ?? 0) + lengthBytes;
  if (own._count >= unfinishedAtMost || withThis(own._sum.lengthBytes) > studentBytesAtMost) {
    throw new ProblemError(
      'too-many-tries',
      'Several of your videos are still on their way. Let them arrive first.',
    );
  }
  if (withThis(all._sum.lengthBytes) > academyBytesAtMost) {
    throw new ProblemError(
      'too-many-tries',
      'Your academy has many videos on their way just now. Try again in an hour; what you typed is kept.',
    );
  }
};

/**
 * Makes room for one video, or one photo of the grip, before its first byte; the clip's id is the id of the upload.
 * @throws ProblemError not-allowed, consent-missing, too-large, bad-request, too-many-tries
 */
export const startClip = async ({ ctx, input }: { ctx: Context; input: NewClip }): Promise<Arrival> => {
  const { studentId } = requireStudent(ctx);
  const { lengthBytes } = input;
  if (!Number.isInteger(lengthBytes) || lengthBytes < 1) {
    throw new ProblemError('bad-request', 'The file is empty. Choose it again.');
  }
  if (lengthBytes > clipBytesAtMost) throw new ProblemError('too-large');
  if (input.view === gripView && lengthBytes > photoBytesAtMost)
    throw new ProblemError('too-large', refusalWords('photo_too_large'));
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const now = ctx.resources.clock.now();
    const student = await lockStudent(tx, ctx, studentId);
    requireSending(student);
    requireConsent(student);
    await requireRoom(tx, ctx, { studentId, lengthBytes });
    const row = await tx.clip.create({
      data: {
        academyId,
        id: newId(),
        studentId,
        fileName: input.fileName.slice(0, 200),
        view: input.view,
        swingLength: input.swingLength,
        status: 'uploading',
        lengthBytes: BigInt(lengthBytes),
        percent: 0,
        fence: 0,
        marksVersion: 0,
        createdAt: now,
        expiresAt: new Date(now.getTime() + uploadHours * 3_600_000),
      },
    });
    await audit(tx, ctx, { action: 'start-clip', subject: `clip:${row.id}`, detail: { lengthBytes } });
    return arrivalOf(row);
  });
};
