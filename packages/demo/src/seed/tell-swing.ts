import type { Resources } from '@ballfirst/services/context';
import { claimSubmission } from '@ballfirst/services/inbox/claim-submission';
import { contextOf } from './at-time.ts';
import type { Chapter } from './chapters.ts';
import type { Members } from './members.ts';
import { tellChapter } from './past.ts';
import { seedSwing } from './seed-swing.ts';

type Given = {
  readonly resources: Resources;
  readonly clipsFolder: string;
  readonly members: Members;
  readonly chapter: Chapter;
};

/** Tells one chapter, once. A coach who has the swing today claims it as coaches do. @returns false when it was told */
export const tellSwing = async ({ resources, clipsFolder, members, chapter }: Given): Promise<boolean> => {
  const { story, key } = chapter;
  const student = members.student(key);
  const told = { blobs: resources.blobs, clipsFolder, student, coachOf: members.coach };
  let submissionId = '';
  const isNew = await tellChapter(
    resources,
    { student, mark: story.mark, standing: story.standing },
    async (past) => {
      submissionId = await seedSwing(past, told, story);
    },
  );
  if (isNew && story.claimedBy !== undefined) {
    const coach = members.coach(story.claimedBy);
    await claimSubmission({
      ctx: contextOf(resources, coach, resources.clock.now()),
      input: { id: submissionId },
    });
  }
  return isNew;
};
