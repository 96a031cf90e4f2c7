import { View } from '@ballfirst/contracts/words';
import type { Learned } from '@ballfirst/db/reads/learned';
import { type ChosenCause, learnBaseRates, ratesById } from '@ballfirst/diagnosis/learn-base-rates';
import { causes } from '@ballfirst/library/causes';
import { type FaultId, faults } from '@ballfirst/library/types';

export type BaseRates = Readonly<Record<string, number>>;

const isFault = (word: string): word is FaultId => faults.some((fault) => fault === word);

/** The choices that count, as the pure code takes them; of a fault that the library no longer has, none. */
export const choicesOf = ({ choices }: Pick<Learned, 'choices'>): ChosenCause[] =>
  choices.flatMap(({ fault, views, ...one }) => {
    const seen = views.flatMap((word) => View.safeParse(word).data ?? []);
    return isFault(fault) ? [{ ...one, fault, views: seen }] : [];
  });

/** What the order of causes starts from: an academy's own rates while it learns, else the library's alone. */
export const baseRatesOf = (learned: Pick<Learned, 'since' | 'choices'>): BaseRates =>
  learned.since === null ? {} : ratesById(learnBaseRates(causes, choicesOf(learned)));
