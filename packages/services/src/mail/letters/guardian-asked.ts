import { everyDrill } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To the guardian of a junior: asked for consent, or told that it was given beside the junior. */
export const guardianAskedLetter = (data: {
  readonly guardianName: string;
  readonly studentName: string;
  readonly academyName: string;
  readonly safeguardContact: string;
  /** Whether consent was given when the student joined. */
  readonly given: boolean;
  readonly url: string;
}): Composed =>
  compose({
    subject: data.given
      ? `Your consent for ${data.studentName}`
      : `${data.studentName} needs your consent to send golf swings`,
    name: data.guardianName,
    academyName: data.academyName,
    paragraphs: [
      data.given
        ? `${data.studentName} has joined us, and your consent as parent or guardian was recorded. If that was not you, withdraw it on the page below.`
        : `${data.studentName} would like to send us videos of golf swings and be answered by a coach. For a junior we need the consent of a parent or guardian first; until then no video is taken.`,
      'On the page you read the text, choose what you agree to, and can withdraw at any time. Keep this letter: the link is yours alone.',
      `You receive a copy of what we write to ${data.studentName}. If anything worries you, write to: ${data.safeguardContact}.`,
    ],
    cautions: everyDrill,
    page: { does: data.given ? 'Read or withdraw your consent' : 'Read the text and decide', url: data.url },
  });
