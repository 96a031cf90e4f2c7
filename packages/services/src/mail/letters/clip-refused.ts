import { everyDrill } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To a student whose video cannot be used. */
export const clipRefusedLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  /** The swing it was sent with; null while it has not been sent. */
  readonly submissionId: string | null;
  /** What is wrong and what to do, as a golfer understands it. */
  readonly reason: string;
}): Composed =>
  compose({
    subject: 'Your video cannot be used yet',
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      data.reason,
      ...(data.submissionId === null
        ? []
        : ['Everything else you told us is kept: only the video is missing.']),
    ],
    cautions: everyDrill,
    page: {
      does: 'Send another video',
      url:
        data.submissionId === null
          ? `${data.publicUrl}/send`
          : `${data.publicUrl}/send?for=${data.submissionId}`,
    },
  });
