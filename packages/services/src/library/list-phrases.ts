import { phrases } from '@ballfirst/library/phrases';
import { savedPhrase } from '@ballfirst/practice/saved-phrase';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { keptItems } from './library-items.ts';
import { KeptPhrase, phraseOf } from './phrase-of.ts';

/** The phrases a coach may use: one's own first, then the academy's, then those of the library. */
export const listPhrases = async ({
  ctx,
}: Pick<Call<'listPhrases'>, 'ctx'>): Promise<Reply<'listPhrases'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const kept = (await keptItems(tx, ctx, 'phrase'))
      .filter(({ content }) => {
        const { owner } = KeptPhrase.parse(content);
        return owner === null || owner === membershipId;
      })
      .map(phraseOf);
    const of = (whose: 'own' | 'academy') => kept.filter((phrase) => phrase.whose === whose);
    return { items: [...of('own'), ...of('academy'), ...phrases.map(savedPhrase)] };
  });
};
