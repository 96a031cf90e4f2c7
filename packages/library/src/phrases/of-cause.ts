import { causeById } from '../causes.ts';
import type { CameraView, FaultId } from '../types.ts';
import type { Phrase } from './phrase.ts';

/** What of a swing a phrase rests on. */
type Evidence = Pick<Phrase, 'when' | 'seen'> & { readonly text: string };
type Side = 'below' | 'above';

const soundBand = (key: string): string => `[[ With your {club}, {band:${key}} is sound.]]`;

/** What a measurement on one side of its band shows; where the band is known it is told, too. */
export const measured = (key: string, side: Side, text: string): Evidence => ({
  when: { key, side },
  text: `${text}${soundBand(key)}`,
});
/** What a coach saw and tapped. */
export const seen = (key: string, text: string): Evidence => ({ seen: { key, answer: 'yes' }, text });
/** Praise: measured within its band. */
export const sound = (key: string, text: string): Evidence => ({
  when: { key, side: 'within' },
  text: `${text}${soundBand(key)}`,
});
/** Praise: looked for and not there. */
export const clear = (key: string, text: string): Evidence => ({ seen: { key, answer: 'no' }, text });

type Written = {
  readonly shows: readonly Evidence[];
  readonly why: readonly (readonly [faults: readonly FaultId[], text: string])[];
  readonly praise: readonly Evidence[];
  /** What to try where the view cannot show it: tells of no measurement. */
  readonly unseen?: Partial<Record<CameraView, string>>;
};

/** The view in which the evidence of a phrase can be had. */
const viewsOf = (cause: string, { when, seen: tapped }: Evidence): Pick<Phrase, 'views'> => {
  const key = when?.key ?? tapped?.key;
  const view = causeById(cause).signs.find((sign) => sign.key === key)?.view;
  return view === undefined || view === 'either' ? {} : { views: [view] };
};

/** All phrases of one cause: what is shown, why it makes the miss, what to try unseen, what is good. */
export const phrasesOf = (cause: string, { shows, why, praise, unseen = {} }: Written): readonly Phrase[] => {
  const about = (kind: Phrase['kind'], words: string) => ({ kind, about: words, causes: [cause] });
  const views = (['face-on', 'down-the-line'] as const).filter((view) => unseen[view] !== undefined);
  return [
    ...shows.map((one) => ({ ...about('shows', 'what I see'), ...one, ...viewsOf(cause, one) })),
    ...why.map(([faults, text]) => ({ ...about('why', 'why it makes the miss'), faults, text })),
    ...views.map((view) => ({
      ...about('unseen', 'what to try instead'),
      ...{ views: [view], text: unseen[view] ?? '' },
    })),
    ...praise.map((one) => ({ ...about('praise', 'what is good'), ...one, ...viewsOf(cause, one) })),
  ].map((phrase, at) => ({ ...phrase, id: `${cause}-${phrase.kind}-${at + 1}` }));
};
