import type { Reply } from '../operation-types.ts';
import { type LinkCall, withConsent } from './consent-behind.ts';
import { consentOf } from './consent-of.ts';
import { endConsent } from './end-consent.ts';

/** A guardian withdraws by the link of the letter. @throws ProblemError not-found, too-many-tries */
export const withdrawConsent = (call: LinkCall<object>): Promise<Reply<'withdrawConsent'>> =>
  withConsent(call, async (tx, ctx, row) =>
    consentOf({ ...row, ...(await endConsent(tx, ctx, row, 'link')) }),
  );
