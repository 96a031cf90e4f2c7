'use client';
import { useUpload } from '../../../../uploads/use-upload.ts';
import { Sent } from './sent.tsx';
import type { Submission } from './use-submission.ts';

/** A swing whose video could not be used: the page where another takes its place. */
export function PutRight({ submission, studentId }: { submission: Submission; studentId: string }) {
  const uploading = useUpload(`${studentId}.${submission.id}`);
  const clip = submission.clips[0];
  const facts = { view: clip?.view ?? 'face-on', swingLength: clip?.swingLength ?? 'full' } as const;
  return <Sent submissionId={submission.id} first={submission} uploading={uploading} facts={facts} />;
}
