import { ProblemError } from '@ballfirst/contracts/problems';
import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall } from './call.ts';
import { consentText } from './consent-text.ts';

/** What a visitor may know of an academy before joining. @throws ProblemError not-found */
export const readAcademy = async ({
  resources,
  input,
}: Pick<IdentityCall<'readAcademy'>, 'resources' | 'input'>): Promise<Reply<'readAcademy'>> => {
  const front = await academyBySlug(resources.db, { slug: input.academy });
  if (front === null) throw new ProblemError('not-found');
  const { slug, name, trialDays, trialStarts, priceWords, promiseHours, consentAge } = front;
  return { slug, name, trialDays, trialStarts, priceWords, promiseHours, consentAge, consentText };
};
