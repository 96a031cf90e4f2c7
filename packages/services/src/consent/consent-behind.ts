import { ProblemError } from '@ballfirst/contracts/problems';
import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context, Resources } from '../context.ts';
import { limitTries } from '../identity/limit-tries.ts';
import { tokenHash } from '../identity/session.ts';
import { inTransaction } from '../in-transaction.ts';

const include = { student: { include: { membership: true, academy: true } } } as const;
export type ConsentRow = Prisma.GuardianConsentGetPayload<{ include: typeof include }>;

/** A link that was never used stops working; one that was used stays the guardian's way to withdraw. */
const unusedDays = 30;

export type LinkCall<I> = {
  readonly resources: Resources;
  readonly input: I & { readonly academy: string; readonly token: string };
  readonly address: string;
  readonly requestId: string;
};

/**
 * Opens the consent behind the link of a letter, held to the end of the work.
 * @throws ProblemError not-found for a link that does not work (any more), too-many-tries
 */
export const withConsent = async <I, T>(
  call: LinkCall<I>,
  work: (tx: Tx, ctx: Context, row: ConsentRow) => Promise<T>,
): Promise<T> => {
  const { resources, input, address, requestId } = call;
  await limitTries({ resources, what: 'link', email: input.token, address });
  const gone = new ProblemError('not-found', 'This link does not work any more. Ask for a new letter.');
  const front = await academyBySlug(resources.db, { slug: input.academy });
  if (front === null) throw gone;
  const ctx: Context = {
    academyId: front.id,
    actor: { kind: 'system', job: 'guardian' },
    resources,
    requestId,
  };
  return inTransaction(ctx, async (tx) => {
    const hash = tokenHash(input.token);
    await tx.$queryRaw`SELECT id FROM public.guardian_consent
      WHERE academy_id = ${front.id}::uuid AND token_hash = ${hash} FOR UPDATE`;
    const row = await tx.guardianConsent.findFirst({
      where: { academyId: front.id, tokenHash: Uint8Array.from(hash) },
      include,
    });
    const oldest = new Date(resources.clock.now().getTime() - unusedDays * 86_400_000);
    if (row === null || (row.givenAt === null && row.askedAt < oldest)) throw gone;
    return work(tx, ctx, row);
  });
};
