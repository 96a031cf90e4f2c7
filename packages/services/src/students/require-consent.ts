import { ProblemError } from '@ballfirst/contracts/problems';
import { z } from 'zod';

const Given = z.object({ withdrawnAt: z.null(), purposes: z.object({ coaching: z.literal(true) }) });

/** Whether a guardian's consent stands: given for coaching and not withdrawn. */
export const hasConsent = (student: { readonly ageGroup: string; readonly consent: unknown }): boolean =>
  student.ageGroup !== 'junior' || Given.safeParse(student.consent).success;

/** A junior sends no video before a guardian's recorded consent. @throws ProblemError consent-missing */
export const requireConsent = (student: { readonly ageGroup: string; readonly consent: unknown }): void => {
  if (!hasConsent(student)) throw new ProblemError('consent-missing');
};
