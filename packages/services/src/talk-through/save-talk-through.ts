import { mostSoundBytes } from '@ballfirst/contracts/http/talk-through';
import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { talkKey } from '../clips/keys.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { clipOfSubmission } from '../review/clip-of-submission.ts';
import type { ClipRow } from '../rows.ts';
import { requireDraft } from './require-draft.ts';
import { type SoundKind, soundKindOf } from './sound-kind.ts';
import { talkInclude, talkThroughOf } from './talk-through-of.ts';

type Track = Reply<'saveTalkThrough'>['track'];

const soundOf = (sound: string): { bytes: Buffer; kind: SoundKind } => {
  const bytes = Buffer.from(sound, 'base64');
  const kind = soundKindOf(bytes);
  if (kind !== null && bytes.length <= mostSoundBytes) return { bytes, kind };
  const message = kind === null ? 'This is no recording of a browser.' : 'The recording is too large.';
  throw new ProblemError('bad-request', undefined, [{ path: 'sound', message }]);
};

const checkTrack = (track: Track, clip: ClipRow): void => {
  if (clip.status !== 'ready') throw new ProblemError('wrong-state');
  if (track.some(({ frame }) => frame >= (clip.frames ?? 0))) throw new ProblemError('mark-outside-frame');
};

/**
 * Keeps a talk-through with the draft of the reply, in place of an earlier one: the sound beside its clip, the track in
 * the row. Nothing is kept of it when either fails.
 * @throws ProblemError not-found, not-claimed, already-claimed, already-answered, wrong-state, bad-request,
 * mark-outside-frame
 */
export const saveTalkThrough = async ({
  ctx,
  input,
}: Call<'saveTalkThrough'>): Promise<Reply<'saveTalkThrough'>> => {
  const { membershipId } = requireStaff(ctx);
  const { academyId } = ctx;
  const { blobs, clock } = ctx.resources;
  const id = newId();
  let written: string | null = null;
  try {
    const { made, former } = await inTransaction(ctx, async (tx) => {
      const row = await requireDraft(tx, ctx, input.id);
      const clip = clipOfSubmission(row, input.clipId);
      checkTrack(input.track, clip);
      const { bytes, kind } = soundOf(input.sound);
      const before = await tx.talkThrough.findUnique({
        where: { academyId_submissionId: { academyId, submissionId: row.id } },
      });
      if (before !== null)
        await tx.talkThrough.delete({ where: { academyId_id: { academyId, id: before.id } } });
      const kept = await tx.talkThrough.create({
        data: {
          ...{ academyId, id, submissionId: row.id, clipId: clip.id, byMembership: membershipId, kind },
          ...{ durationMs: input.durationMs, track: input.track, captions: input.captions, at: clock.now() },
        },
        include: talkInclude,
      });
      await audit(tx, ctx, {
        action: 'save-talk-through',
        subject: `submission:${row.id}`,
        detail: { id, durationMs: input.durationMs, bytes: bytes.length },
      });
      written = talkKey({ academyId, clipId: clip.id }, id);
      await blobs.put(written, bytes);
      return { made: kept, former: before };
    });
    if (former !== null) await blobs.remove(talkKey({ academyId, clipId: former.clipId }, former.id));
    return talkThroughOf(made);
  } catch (error) {
    if (written !== null) await blobs.remove(written);
    throw error;
  }
};
