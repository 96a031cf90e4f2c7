import { everyDrill } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To a student whose coach needs a better clip. */
export const filmAgainLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly submissionId: string;
  /** The reason and what to do, as a golfer understands it. */
  readonly reason: string;
}): Composed =>
  compose({
    subject: 'Please film your swing once more',
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      'Your coach looked at your video and cannot judge the swing from it.',
      data.reason,
      'Everything else you told us is kept: only the video is missing.',
    ],
    cautions: everyDrill,
    page: { does: 'Send the new video', url: `${data.publicUrl}/send?for=${data.submissionId}` },
  });
