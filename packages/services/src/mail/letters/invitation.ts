import { type Composed, compose } from './compose.ts';

/** To somebody who is invited to the staff. */
export const invitationLetter = (data: {
  readonly name: string;
  readonly invitedBy: string;
  readonly academyName: string;
  readonly role: 'coach' | 'manager';
  readonly url: string;
  readonly days: number;
}): Composed =>
  compose({
    subject: `${data.invitedBy} invites you to ${data.academyName}`,
    name: data.name,
    academyName: data.academyName,
    paragraphs: [
      `${data.invitedBy} invites you to ${data.academyName} as a ${data.role}.`,
      data.role === 'coach'
        ? 'As a coach you answer the swings that students send.'
        : 'As a manager you see students, trials and settings, and you may answer swings too.',
      `The link works once, for ${data.days} days. If you do not expect it, do nothing.`,
    ],
    page: { does: 'Accept the invitation', url: data.url },
  });
