import { fillPhrase, type PhraseValues } from './fill-phrase.ts';

/** A saved phrase, wherever it comes from. */
export type SavedPhrase = {
  readonly id: string;
  readonly about: string;
  readonly text: string;
  readonly causes: readonly string[];
  readonly when: { readonly key: string; readonly side: 'below' | 'above' } | null;
};
/** How surely a measurement lies outside its band, either way. */
export type Sided = {
  readonly key: string;
  readonly probabilityBelow: number;
  readonly probabilityAbove: number;
};
export type OfferedPhrase<P extends SavedPhrase> = { readonly phrase: P; readonly text: string };

/** As sure as this that a measurement lies outside its band, a phrase may say so. Common practice, no source. */
const sureEnough = 0.7;

type Given = {
  readonly cause: string | null;
  readonly values: PhraseValues;
  readonly readings: readonly Sided[];
};

/**
 * Whether what a phrase says of a measurement is so; one that was not made contradicts nothing, but then no figure of it
 * may be told either.
 */
const holds = ({ when }: SavedPhrase, readings: readonly Sided[]): boolean => {
  if (when === null) return true;
  const reading = readings.find(({ key }) => key === when.key);
  if (reading === undefined) return true;
  return (when.side === 'below' ? reading.probabilityBelow : reading.probabilityAbove) >= sureEnough;
};

/** The phrases that can be said of this swing, filled in; those about the chosen cause first. */
export const offerPhrases = <P extends SavedPhrase>(
  phrases: readonly P[],
  { cause, values, readings }: Given,
): readonly OfferedPhrase<P>[] => {
  const fits = ({ causes }: SavedPhrase) => causes.length === 0 || (cause !== null && causes.includes(cause));
  return phrases
    .filter((phrase) => fits(phrase) && holds(phrase, readings))
    .flatMap((phrase) => {
      const text = fillPhrase(phrase.text, values);
      return text === null ? [] : [{ phrase, text }];
    })
    .sort((a, b) => Number(b.phrase.causes.length > 0) - Number(a.phrase.causes.length > 0));
};

/** Every word of the search stands somewhere in the phrase or in what it is about. */
export const searchPhrases = <P extends SavedPhrase>(
  offered: readonly OfferedPhrase<P>[],
  search: string,
): readonly OfferedPhrase<P>[] => {
  const wanted = search.toLowerCase().split(/\s+/).filter(Boolean);
  return offered.filter(({ phrase, text }) => {
    const said = `${phrase.about} ${text}`.toLowerCase();
    return wanted.every((word) => said.includes(word));
  });
};
