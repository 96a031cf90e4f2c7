import type { Resources } from '@ballfirst/services/context';
import { sendSubmission } from '@ballfirst/services/submissions/send-submission';
import { contextOf, hoursBefore, type Member } from './at-time.ts';
import { type KeptFiles, seedClip } from './seed-clip.ts';
import type { SwingLine } from './swings.ts';

/** Sends one swing at the time the story says. @returns the ids an answer needs */
export const seedSwing = async (
  resources: Resources,
  student: Member,
  line: SwingLine,
  kept: KeptFiles,
  now: Date,
): Promise<{ submissionId: string; clipId: string; sentAt: Date }> => {
  const sentAt = hoursBefore(now, line.hoursAgo);
  const clipId = await seedClip(resources, student, kept, sentAt);
  const sent = await sendSubmission({
    ctx: contextOf(resources, student, sentAt),
    input: {
      clipIds: [clipId],
      club: line.club,
      lie: line.lie,
      tally: line.tally,
      startLine: 'straight',
      curve: 'none',
      typical: 'usual',
      note: line.note,
      pain: line.pain?.kind ?? 'none',
      painNote: line.pain?.note ?? '',
      checkInId: null,
    },
  });
  return { submissionId: sent.id, clipId, sentAt };
};
