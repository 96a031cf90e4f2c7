import { keepModelSwing } from '@ballfirst/services/compare/keep-model-swing';
import { acknowledgePain } from '@ballfirst/services/inbox/acknowledge-pain';
import { askToFilmAgain } from '@ballfirst/services/inbox/ask-to-film-again';
import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { releaseSubmission } from '@ballfirst/services/inbox/release-submission';
import { idOfTurn } from '@ballfirst/services/learning/id-of-turn';
import type { Blobs } from '@ballfirst/services/ports';
import { saveMarks } from '@ballfirst/services/review/save-marks';
import { sendSubmission } from '@ballfirst/services/submissions/send-submission';
import type { Member } from './at-time.ts';
import { firstKept, readGrip, readKept } from './kept-files.ts';
import { markingOf } from './marking-of.ts';
import type { Past } from './past.ts';
import { seedAnswer } from './seed-answer.ts';
import { seedClip, seedPhoto } from './seed-clip.ts';
import type { SwingStory } from './story.ts';

export type Told = {
  readonly blobs: Blobs;
  readonly clipsFolder: string;
  readonly student: Member & { readonly hand: 'right' | 'left' };
  readonly coachOf: (key: string) => Member;
};

/** Tells one swing and what came of it, in the open transaction. @returns the submission's id */
export const seedSwing = async (past: Past, told: Told, story: SwingStory): Promise<string> => {
  const { student, coachOf, clipsFolder } = told;
  const { sentAt, filmAgain, answered, painSeen, marked, model } = story;
  const kept = await readKept(clipsFolder, firstKept(clipsFolder, story.clips));
  const { refused } = story;
  const filmed = { kept, at: sentAt, ...(refused === undefined ? {} : { refused }) };
  const clipId = await seedClip(past, told.blobs, student, filmed);
  const photo = story.grip === undefined ? null : await readGrip(clipsFolder, story.grip);
  const gripPhotoId =
    photo === null ? null : await seedPhoto(past, told.blobs, student, { jpeg: photo, at: sentAt });
  const sent = await sendSubmission({
    ctx: { ...past.of(student, sentAt), mintId: () => idOfTurn(story.isBlindTurn) },
    input: {
      clipIds: [clipId],
      club: story.club,
      lie: story.lie,
      tally: story.tally,
      startLine: story.startLine,
      curve: story.curve,
      typical: 'usual',
      note: story.note,
      pain: story.pain?.kind ?? 'none',
      painNote: story.pain?.note ?? '',
      checkInId: await openCheckIn(past, student),
      gripPhotoId,
    },
  });
  await past.answered();
  if (painSeen) {
    await acknowledgePain({ ctx: past.of(coachOf(painSeen.coach), painSeen.at), input: { id: sent.id } });
  }
  if (marked) {
    const ctx = past.of(coachOf(marked.coach), marked.at);
    await claimSubmission({ ctx, input: { id: sent.id } });
    const marking = markingOf(kept, `${student.name} waiting`);
    const input = { id: sent.id, clipId, version: 0, ...marking, observations: [] };
    await saveMarks({ ctx, input });
    await releaseSubmission({ ctx, input: { id: sent.id } });
  }
  if (filmAgain) {
    const coach = coachOf(filmAgain.coach);
    await claimSubmission({ ctx: past.of(coach, filmAgain.at), input: { id: sent.id } });
    const input = { id: sent.id, reason: filmAgain.reason };
    await askToFilmAgain({ ctx: past.of(coach, filmAgain.at), input });
  }
  if (answered) {
    const swing = { submissionId: sent.id, clipId };
    await seedAnswer(past, { coach: coachOf(answered.coach), student, swing, answer: answered, kept });
  }
  if (answered && model) {
    const { by, name, permission } = model;
    const permittedOn = answered.at.toISOString().slice(0, 10);
    const input = { id: clipId, name, permission, permittedOn };
    await keepModelSwing({ ctx: past.of(coachOf(by), answered.at), input });
  }
  return sent.id;
};

/** A check-in that asks for a fresh clip and has had no answer; held, since the worker looks after check-ins meanwhile. */
const openCheckIn = async (past: Past, { academyId, studentId }: Member): Promise<string | null> => {
  const [open] = await past.tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM public.check_in
    WHERE academy_id = ${academyId}::uuid AND student_id = ${studentId}::uuid
      AND asks = 'clip' AND status IN ('scheduled', 'sent')
    LIMIT 1 FOR UPDATE`;
  return open?.id ?? null;
};
