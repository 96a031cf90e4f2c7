import { type Composed, compose } from './compose.ts';

/** To a student whose trial is over. */
export const trialEndedLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  /** What it costs to go on, in the academy's words. */
  readonly priceWords: string;
}): Composed =>
  compose({
    subject: `Your trial with ${data.academyName} has ended`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      'Your trial has ended. Your replies stay here for you to read.',
      `If you would like to go on, tell your coach: ${data.priceWords}.`,
    ],
    page: { does: 'Your page', url: `${data.publicUrl}/home` },
  });
