import { ProblemError } from '@ballfirst/contracts/problems';

const may = new Set(['invited', 'trial', 'paid']);

/** Whether a standing lets new swings be sent; what was answered stays readable in any. */
export const mayWithStanding = (standing: string): boolean => may.has(standing);

/** @throws ProblemError not-allowed where the standing lets no new swing be sent */
export const requireSending = (student: { readonly standing: string }): void => {
  if (mayWithStanding(student.standing)) return;
  throw new ProblemError(
    'not-allowed',
    student.standing === 'lapsed'
      ? 'Your trial has ended. Your replies stay here; write to the academy to go on.'
      : 'You are not sending swings at the moment. Write to the academy to go on.',
  );
};
