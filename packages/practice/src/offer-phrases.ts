import type { CameraView, FaultId } from '@ballfirst/library/types';
import { fillPhrase, type PhraseValues } from './fill-phrase.ts';
import type { SavedPhrase } from './saved-phrase.ts';

/** How surely a measurement lies outside its band, either way. */
export type Sided = {
  readonly key: string;
  readonly probabilityBelow: number;
  readonly probabilityAbove: number;
  readonly band: unknown;
};
export type OfferedPhrase<P extends SavedPhrase> = { readonly phrase: P; readonly text: string };

/** As sure as this that a measurement lies outside its band, or within it, a phrase may say so. Common practice, no source. */
const sureEnough = 0.7;

type Given = {
  readonly cause: string | null;
  readonly fault: FaultId;
  /** Where the camera stood; null: not known. */
  readonly view: CameraView | null;
  readonly values: PhraseValues;
  readonly readings: readonly Sided[];
  readonly observations: readonly { readonly key: string; readonly answer: string }[];
};

/**
 * Whether what a phrase says of a measurement is so; one that was not made contradicts nothing, but then no figure of it
 * may be told either. That a measurement is sound is said only of one that was made and has a band.
 */
const measuredSo = ({ when }: SavedPhrase, readings: Given['readings']): boolean => {
  if (when === null) return true;
  const reading = readings.find(({ key }) => key === when.key);
  if (reading === undefined || (reading.band ?? null) === null) return when.side !== 'within';
  const { probabilityBelow, probabilityAbove } = reading;
  if (when.side === 'within') return 1 - probabilityBelow - probabilityAbove >= sureEnough;
  return (when.side === 'below' ? probabilityBelow : probabilityAbove) >= sureEnough;
};

/** Two phrases say opposite things of one measurement: without it nobody knows which of them is so. */
const isOneOfTwo = ({ kind, causes, when }: SavedPhrase, all: readonly SavedPhrase[]): boolean =>
  kind === 'shows' &&
  all.some(
    (other) =>
      other.kind === 'shows' &&
      other.causes[0] === causes[0] &&
      other.when?.key === when?.key &&
      other.when?.side !== when?.side,
  );

/** The same of what a coach saw: what was not tapped contradicts nothing and praises nothing. */
const seenSo = ({ seen }: SavedPhrase, observations: Given['observations']): boolean => {
  if (seen === null) return true;
  const answer = observations.find(({ key }) => key === seen.key)?.answer;
  return answer === undefined || answer === 'cannot-tell' ? seen.answer === 'yes' : answer === seen.answer;
};

/** What rests on something comes before what does not, then the rest of the chosen cause, praise, and what fits any. */
const rankOf = ({ phrase }: OfferedPhrase<SavedPhrase>, { cause, readings, observations }: Given): number => {
  if (phrase.causes.length === 0) return 5;
  if (phrase.kind === 'praise') return 4;
  if (phrase.kind !== 'shows') return phrase.kind === 'unseen' ? 1 : 2;
  const { when, seen } = phrase;
  const rests =
    readings.some(({ key }) => key === when?.key) || observations.some(({ key }) => key === seen?.key);
  return cause !== null && rests ? 0 : 1;
};

/** The phrases that can be said of this swing, filled in; those about the chosen cause first. Praise is of any cause. */
export const offerPhrases = <P extends SavedPhrase>(
  phrases: readonly P[],
  given: Given,
): readonly OfferedPhrase<P>[] => {
  const { cause, fault, view, values, readings, observations } = given;
  const fits = ({ kind, causes, faults, views }: SavedPhrase): boolean =>
    (causes.length === 0 || kind === 'praise' || (cause !== null && causes.includes(cause))) &&
    (faults.length === 0 || faults.includes(fault)) &&
    (views.length === 0 || (view !== null && views.includes(view)));
  const known = (phrase: SavedPhrase): boolean =>
    readings.some(({ key }) => key === phrase.when?.key) || !isOneOfTwo(phrase, phrases);
  return phrases
    .filter(
      (phrase) =>
        fits(phrase) && known(phrase) && measuredSo(phrase, readings) && seenSo(phrase, observations),
    )
    .flatMap((phrase) => {
      const text = fillPhrase(phrase.text, values);
      return text === null ? [] : [{ phrase, text }];
    })
    .sort((a, b) => rankOf(a, given) - rankOf(b, given));
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
