import { type Composed, compose } from './compose.ts';

/** To whoever asked for a new password. */
export const resetLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly url: string;
  readonly minutes: number;
}): Composed =>
  compose({
    subject: 'A new password',
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      'Somebody asked for a new password for this address. If it was you, choose one on the page below.',
      `The link works once, for ${data.minutes} minutes. When you use it you are signed out everywhere else.`,
      'If it was not you, do nothing: your password stays as it is.',
    ],
    page: { does: 'Choose a new password', url: data.url },
  });
