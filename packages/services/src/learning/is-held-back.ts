import { blindTurn } from '@ballfirst/diagnosis/blind-turn';

type Swing = {
  readonly id: string;
  readonly status: string;
  readonly pain: string;
  readonly sentAt: Date | string;
  readonly orderShownAt: Date | string | null;
  readonly clips: readonly { readonly status: string }[];
};

/**
 * Whether the order of causes is held back until a coach has named one: on the turn of a swing that was sent since the
 * academy learns. Never where pain comes first, nor where no clip can be read: then it can only be filmed again.
 *
 * @param since - since when the academy learns; null: it does not
 * @param chosen - a cause was chosen already
 */
export const isHeldBack = (
  swing: Swing,
  { since, chosen }: { readonly since: Date | string | null; readonly chosen: boolean },
): boolean =>
  since !== null &&
  !chosen &&
  swing.orderShownAt === null &&
  swing.status === 'waiting' &&
  swing.pain === 'none' &&
  swing.clips.some(({ status }) => status === 'ready') &&
  new Date(swing.sentAt) >= new Date(since) &&
  blindTurn(swing.id);
