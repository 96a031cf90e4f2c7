import type { Reply } from '@ballfirst/contracts/client';
import { reasonWords } from '@ballfirst/diagnosis/reason-words';

type Reason = Reply<'readInbox'>['items'][number]['reasons'][number];

/** Why a row stands where it stands; a solid lead outcome is no miss and brings no head start. */
export const inboxReason = (reason: Reason, when: (instant: string) => string): string => {
  if (reason.kind !== 'fault') return reasonWords(reason, when);
  const { fault, ...rest } = reason;
  return fault === 'solid' ? 'No miss stands out' : reasonWords({ ...rest, fault }, when);
};
