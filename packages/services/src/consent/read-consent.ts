import type { Reply } from '../operation-types.ts';
import { type LinkCall, withConsent } from './consent-behind.ts';
import { consentOf } from './consent-of.ts';

/** What the link of a letter asks a guardian. @throws ProblemError not-found, too-many-tries */
export const readConsent = (call: LinkCall<object>): Promise<Reply<'readConsent'>> =>
  withConsent(call, async (_tx, _ctx, row) => consentOf(row));
