import { type Composed, compose } from './compose.ts';

/** To a manager: a student would like to join. */
export const joinAskedLetter = (data: {
  readonly name: string;
  readonly studentName: string;
  readonly academyName: string;
  readonly url: string;
}): Composed =>
  compose({
    subject: `${data.studentName} would like to join`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `${data.studentName} would like to join ${data.academyName}.`,
      'Nothing has been charged. Get in touch, and set the student to paid when it is agreed.',
    ],
    page: { does: 'Open the student', url: data.url },
  });
