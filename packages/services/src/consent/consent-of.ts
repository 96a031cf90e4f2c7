import { consentText, consentTextOf } from '../identity/consent-text.ts';
import type { Reply } from '../operation-types.ts';
import type { ConsentRow } from './consent-behind.ts';
import { stateOf } from './guardian-state.ts';

/** A consent as its guardian reads it. */
export const consentOf = (row: ConsentRow): Reply<'readConsent'> => {
  const state = stateOf(row);
  return {
    academyName: row.student.academy.name,
    studentName: row.student.membership.name,
    guardianName: row.guardianName,
    state,
    text: state === 'given' ? consentTextOf(row.textVersion) : consentText,
    purposes: { quality: row.quality, teaching: row.teaching },
    at: (row.withdrawnAt ?? row.givenAt ?? row.askedAt).toISOString(),
    safeguardContact: row.student.academy.safeguardContact,
  };
};
