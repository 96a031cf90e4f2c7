import { ReplyDraft } from '@ballfirst/contracts/http/review';
import type { z } from 'zod';

/** A reply as its coach sees it. */
export const replyDraftOf = (row: {
  readonly id: string;
  readonly status: string;
  readonly words: string;
  readonly cause: string | null;
  readonly setUpTicks: readonly string[];
  readonly frames: unknown;
  readonly plan: unknown;
  readonly version: number;
  readonly sentAt: Date | string | null;
  readonly sendsAt: Date | string | null;
  readonly correctedAt: Date | string | null;
  readonly moreCauses: readonly string[];
  readonly moreAgreedAt: Date | string | null;
  readonly teachingClip: unknown;
  readonly withTalk: boolean;
}): z.output<typeof ReplyDraft> =>
  ReplyDraft.parse({
    ...row,
    sentAt: instantOf(row.sentAt),
    sendsAt: instantOf(row.sendsAt),
    correctedAt: instantOf(row.correctedAt),
    moreAgreedAt: instantOf(row.moreAgreedAt),
  });

const instantOf = (at: Date | string | null): string | null =>
  at === null ? null : new Date(at).toISOString();
