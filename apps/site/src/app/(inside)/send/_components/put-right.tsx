'use client';
import { useKeptDraft } from '../../../../kept/use-kept-draft.ts';
import { emptyDraft } from './draft.ts';
import { Sent } from './sent.tsx';
import { isOnItsWay, type Slots } from './slot.ts';
import { useAwake } from './use-awake.ts';
import { useClip } from './use-clip.ts';
import { useGripPhoto } from './use-grip-photo.ts';
import type { Submission } from './use-submission.ts';

/** A swing that was sent: where another video takes the place of a refused one, a photo of the grip comes beside it, and what was said is put right. */
export function PutRight({ submission, studentId }: { submission: Submission; studentId: string }) {
  const owner = `${studentId}.${submission.id}`;
  const { draft, change } = useKeptDraft(`ballfirst.put-right.${owner}`, emptyDraft);
  const given = { owner, draft, change, swingLength: submission.clips[0]?.swingLength ?? 'full' };
  const faceOn = useClip({ ...given, view: 'face-on' });
  const behind = useClip({ ...given, view: 'down-the-line' });
  const slots: Slots = { 'face-on': faceOn, 'down-the-line': behind };
  const grip = useGripPhoto({ owner, draft, change });
  useAwake([faceOn, behind, grip].some(isOnItsWay));
  return <Sent submissionId={submission.id} first={submission} slots={slots} grip={grip} />;
}
