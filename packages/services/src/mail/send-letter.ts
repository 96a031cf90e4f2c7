import { newId } from '@ballfirst/db/ids';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import type { Composed } from './letters/compose.ts';

/** Longer than a mail server is waited for (20 s a step in `edges`), so that a slow one is not taken for a failed one. */
const transactionMs = 60_000;

export type LetterGiven = {
  readonly eventId: string;
  /** What kind of letter, as the manager's list of mail shows it: `reply-sent`. */
  readonly kind: string;
  /** Whose letter, where one event writes several: `guardian`, a membership. */
  readonly copy?: string;
  readonly to: { readonly membershipId: string; readonly name: string; readonly address: string };
  readonly academyName: string;
  readonly letter: Composed;
  /** What the manager's list keeps instead of the text: a letter with a link that opens an account. */
  readonly kept?: string;
  /** Where a mail program ends reminders by itself, by one POST. */
  readonly stopUrl?: string;
};

/**
 * Sends a letter once for its event. The event's key and the row for the manager's list are written first, the letter
 * leaves last, then all is committed: a crash before it left loses nothing, the job sends it then. A crash between
 * leaving and commit sends it a second time under the same Message-ID: to a folder that is the same file, so nothing
 * doubles; SMTP promises no more than this, at most one duplicate a crash, which readers' programs fold by its id.
 * @returns sent: false when it had been sent before
 */
export const sendLetter = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: LetterGiven;
}): Promise<{ sent: boolean }> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const { eventId, kind, to, letter } = input;
  const name = input.copy === undefined ? kind : `${kind}.${input.copy}`;
  const host = new URL(resources.publicUrl).hostname;
  const date = resources.clock.now();
  const done = await onceEffect(
    ctx,
    { eventId, name: `letter.${name}` },
    async (tx) => {
      await tx.$queryRaw`SELECT set_config('idle_in_transaction_session_timeout', ${String(transactionMs)}, true)`;
      await tx.mail.create({
        data: {
          academyId,
          id: newId(),
          toMembership: to.membershipId,
          sentTo: `${to.name} <${to.address}>`,
          kind: name.endsWith('.guardian') ? `${kind}.guardian` : kind,
          subject: letter.subject,
          textBody: input.kept ?? letter.text,
          at: date,
        },
      });
      await resources.mailer.send({
        ...letter,
        to: { name: to.name, address: to.address },
        from: { name: input.academyName, address: `lessons@${host}` },
        messageId: `<${name}.${eventId}@${host}>`,
        date,
        ...(input.stopUrl === undefined ? {} : { stopUrl: input.stopUrl }),
      });
      return true;
    },
    { timeoutMs: transactionMs },
  );
  return { sent: done ?? false };
};
