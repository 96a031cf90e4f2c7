import { everyDrill } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To a student who is now a paying one. */
export const nowPaidLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly promiseHours: number;
}): Composed =>
  compose({
    subject: `Thank you for staying with ${data.academyName}`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      'Thank you: you are a full student of the academy now.',
      `Send a swing whenever you like; you have an answer within ${data.promiseHours} working hours.`,
    ],
    cautions: everyDrill,
    page: { does: 'Your page', url: `${data.publicUrl}/home` },
  });
