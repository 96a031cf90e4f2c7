import type { Phrase } from '@ballfirst/library/phrases/phrase';

/** A saved phrase, wherever it comes from: nothing that limits it is left open. */
export type SavedPhrase = {
  readonly id: string;
  readonly kind: Phrase['kind'];
  readonly about: string;
  readonly text: string;
  readonly causes: readonly string[];
  readonly when: NonNullable<Phrase['when']> | null;
  readonly seen: NonNullable<Phrase['seen']> | null;
  readonly faults: readonly NonNullable<Phrase['faults']>[number][];
  readonly views: readonly NonNullable<Phrase['views']>[number][];
};

/** A phrase of the library as a saved one. */
export const savedPhrase = ({ id, kind, about, text, causes, when, seen, faults, views }: Phrase) => ({
  ...{ id, kind, about, text, causes: [...(causes ?? [])], when: when ?? null, seen: seen ?? null },
  ...{ faults: [...(faults ?? [])], views: [...(views ?? [])], whose: 'library' as const },
});
