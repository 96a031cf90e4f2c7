import { Phrase } from '@ballfirst/contracts/http/phrases';
import { z } from 'zod';
import type { KeptRow } from './library-items.ts';

/** What is stored of a phrase; `owner` is the membership whose own it is, null for the academy's. */
export const KeptPhrase = z.object({ about: z.string(), text: z.string(), owner: z.string().nullable() });

/** A kept phrase as the contract says it. */
export const phraseOf = (row: KeptRow): z.output<typeof Phrase> => {
  const { about, text, owner } = KeptPhrase.parse(row.content);
  return Phrase.parse({
    ...{ id: row.key, about, text, whose: owner === null ? 'academy' : 'own' },
    ...{ kind: 'plain', causes: [], when: null, seen: null, faults: [], views: [] },
  });
};
