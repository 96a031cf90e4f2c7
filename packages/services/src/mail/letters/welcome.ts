import { everyDrill } from '@ballfirst/library/cautions';
import { type Composed, compose } from './compose.ts';

/** To a student who has joined. */
export const welcomeLetter = (data: {
  readonly name: string;
  readonly academyName: string;
  readonly publicUrl: string;
  readonly trialDays: number;
  readonly trialStarts: 'joining' | 'first-swing';
  /** Working hours within which an answer is promised. */
  readonly promiseHours: number;
  /** For a junior: the address to write to with a worry. */
  readonly safeguardContact: string | null;
}): Composed =>
  compose({
    subject: `Welcome to ${data.academyName}`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      'Film one of your usual swings with your phone on a stand, tap how your last ten balls came off, and send both. A coach looks at it and answers with the one thing to work on first.',
      `You have an answer within ${data.promiseHours} working hours.`,
      data.trialStarts === 'joining'
        ? `Your trial of ${data.trialDays} days began when you joined.`
        : `Your trial of ${data.trialDays} days begins with your first swing.`,
      ...(data.safeguardContact === null
        ? []
        : [
            `An adult should be there whenever you film or practise. If anything worries you, write to: ${data.safeguardContact}.`,
          ]),
    ],
    cautions: everyDrill,
    page: { does: 'Send your first swing', url: `${data.publicUrl}/send` },
  });
