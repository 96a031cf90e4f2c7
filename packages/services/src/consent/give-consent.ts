import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { consentText } from '../identity/consent-text.ts';
import type { Reply } from '../operation-types.ts';
import { type LinkCall, withConsent } from './consent-behind.ts';
import { consentOf } from './consent-of.ts';
import { keepStanding } from './keep-standing.ts';
import type { Purposes } from './open-consent.ts';

/**
 * A guardian consents by the link of a letter, to the text that was read; given again, purposes may change and a
 * withdrawal ends.
 * @throws ProblemError not-found, too-many-tries, changed-meanwhile when the text is a newer one by now
 */
export const giveConsent = (
  call: LinkCall<{ readonly version: string; readonly purposes: Purposes }>,
): Promise<Reply<'giveConsent'>> =>
  withConsent(call, async (tx, ctx, row) => {
    const { version, purposes } = call.input;
    const stands = row.givenAt !== null && row.withdrawnAt === null;
    if (version !== (stands ? row.textVersion : consentText.version)) {
      throw new ProblemError('changed-meanwhile', 'The text has changed. Please read it again.');
    }
    const given = await tx.guardianConsent.update({
      where: { academyId_id: { academyId: ctx.academyId, id: row.id } },
      data: {
        textVersion: version,
        ...purposes,
        evidence: stands ? row.evidence : 'link',
        givenAt: stands ? row.givenAt : ctx.resources.clock.now(),
        withdrawnAt: null,
      },
      include: { student: { include: { membership: true, academy: true } } },
    });
    await keepStanding(tx, ctx, given);
    const detail = { textVersion: version, evidence: 'link', ...purposes };
    await audit(tx, ctx, { action: 'give-consent', subject: `consent:${row.id}`, detail });
    return consentOf(given);
  });
