import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { consentText } from '../identity/consent-text.ts';
import { emit } from '../outbox.ts';
import { keepStanding } from './keep-standing.ts';

export type Guardian = { readonly name: string; readonly relation: string; readonly email: string };
export type Purposes = { readonly quality: boolean; readonly teaching: boolean };

/**
 * Opens the consent of a junior's guardian: given here by one who sits beside, or only asked for. Either way a letter
 * with a link goes to the guardian. Earlier links of this student stop working.
 */
export const openConsent = async (
  tx: Tx,
  ctx: Context,
  of: { readonly studentId: string; readonly guardian: Guardian; readonly given: Purposes | null },
): Promise<void> => {
  const { academyId } = ctx;
  const { studentId, guardian, given } = of;
  const now = ctx.resources.clock.now();
  await tx.guardianConsent.updateMany({
    where: { academyId, studentId, givenAt: null },
    data: { tokenHash: null },
  });
  const row = await tx.guardianConsent.create({
    data: {
      academyId,
      id: newId(),
      studentId,
      guardianName: guardian.name,
      guardianEmail: guardian.email,
      relation: guardian.relation,
      quality: given?.quality ?? false,
      teaching: given?.teaching ?? false,
      askedAt: now,
      ...(given !== null && { textVersion: consentText.version, evidence: 'beside', givenAt: now }),
    },
  });
  await keepStanding(tx, ctx, row);
  const action = given === null ? 'ask-guardian' : 'give-consent';
  const detail = given === null ? {} : { textVersion: consentText.version, evidence: 'beside', ...given };
  await audit(tx, ctx, { action, subject: `consent:${row.id}`, detail });
  await emit(tx, ctx, 'guardian.asked', { consentId: row.id });
};
