import { painHoldSentence } from '@ballfirst/library/cautions';
import type { Reply } from '../operation-types.ts';

type Next = Reply<'readHome'>['next'];

/** What a student's home is decided by, newest first where there are several. */
export type Standing = {
  readonly programme: { readonly status: string; readonly drillName: string } | null;
  /** A swing told of a pain that no coach has read yet. */
  readonly painTold: boolean;
  readonly unreadReplyId: string | null;
  /** A swing whose video was refused, or is to be filmed again. */
  readonly toPutRight: { readonly submissionId: string; readonly words: string } | null;
  /** A check-in that was sent and asks for a fresh clip. */
  readonly openCheckInId: string | null;
  readonly waiting: boolean;
  readonly swings: number;
  /** A junior whose guardian's consent does not stand: no video is taken. */
  readonly consentMissing: boolean;
  /** False when the standing lets no new swing be sent. */
  readonly maySend: boolean;
};

const consentFirst: Next = {
  kind: 'consent-first',
  words: 'Your guardian agrees first: until then no video can be sent.',
  href: '/send',
};

/** The one thing to do next: safety first, then what others wait for, then practice, then a new swing. */
export const nextStep = (at: Standing): Next => {
  if (at.programme?.status === 'held' || at.painTold) {
    const href = at.unreadReplyId === null ? null : `/replies/${at.unreadReplyId}`;
    return { kind: 'hold', words: painHoldSentence, href };
  }
  if (at.unreadReplyId !== null) {
    return {
      kind: 'read-reply',
      words: 'Your coach has answered. Read it.',
      href: `/replies/${at.unreadReplyId}`,
    };
  }
  const films = at.toPutRight !== null || at.openCheckInId !== null || at.swings === 0;
  if (at.consentMissing && at.maySend && films) return consentFirst;
  if (at.toPutRight !== null) {
    const { submissionId, words } = at.toPutRight;
    return { kind: 'put-clip-right', words, href: `/send?for=${submissionId}` };
  }
  if (at.openCheckInId !== null && at.maySend) {
    return {
      kind: 'film-check-in',
      words: 'Time to see whether it worked: film one swing and send it.',
      href: `/send?check-in=${at.openCheckInId}`,
    };
  }
  if (at.programme?.status === 'open') {
    return { kind: 'practise', words: `Practise: ${at.programme.drillName}.`, href: null };
  }
  if (at.waiting) {
    return { kind: 'wait', words: 'Your swing is with the coaches. Nothing to do but wait.', href: null };
  }
  if (!at.maySend) {
    return {
      kind: 'wait',
      words: 'You are not sending swings at the moment. Your replies stay here.',
      href: null,
    };
  }
  if (at.consentMissing) return consentFirst;
  return at.swings === 0
    ? {
        kind: 'send-first',
        words: 'Film your usual swing and send it: it takes three minutes.',
        href: '/send',
      }
    : {
        kind: 'send-again',
        words: 'Film a swing and send it, so that your coach sees where you are.',
        href: '/send',
      };
};
