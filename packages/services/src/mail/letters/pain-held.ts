import { neverDiagnoseSentence } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To a coach or manager: a student told us of a pain. What was told is health data and stays out of mail. */
export const painHeldLetter = (data: {
  readonly name: string;
  readonly studentName: string;
  readonly academyName: string;
  /** Whether a programme was put on hold by it. */
  readonly held: boolean;
  readonly page: { readonly does: string; readonly url: string };
}): Composed =>
  compose({
    subject: data.held ? `Practice on hold: ${data.studentName}` : `Please read first: ${data.studentName}`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `${data.studentName} has told us of a pain.`,
      ...(data.held ? ['The programme is on hold until a coach lets it go on.'] : []),
      'Please read the report today. Do not ask for another swing before a doctor or physiotherapist has seen the student.',
      neverDiagnoseSentence,
    ],
    page: data.page,
  });
