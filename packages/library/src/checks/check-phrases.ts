import { keyOfVariable, plainVariables, variablesIn } from '../phrase-variables.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { wayOf } from '../phrases/ways.ts';
import { type CameraView, type Cause, faults } from '../types.ts';
import { codesInWords, sidesInWords } from './check-words.ts';

const views: readonly CameraView[] = ['face-on', 'down-the-line'];

// A coach says what the club and the body do, never what is wrong with a body.
const injury =
  /\b(injur\w*|hurt\w*|pain\w*|sore\w*|ache\w*|disc|tendon\w*|ligament\w*|arthriti\w*|sprain\w*|strain\w*|torn|fractur\w*|hernia\w*|inflam\w*|damag\w*)\b/i;

const ofVariables = (phrase: Phrase, cause: Cause | null): readonly string[] =>
  variablesIn(phrase.text).flatMap((name) => {
    const key = keyOfVariable(name);
    if (key === null) {
      return plainVariables.some((one) => one === name) ? [] : [`asks for an unknown {${name}}`];
    }
    if (key !== phrase.when?.key) return [`tells of "${key}", which it does not rest on`];
    if (/^(way|band):/.test(name) && wayOf(key) === undefined)
      return [`has no words for the side of "${key}"`];
    return cause?.signs.some((sign) => sign.kind === 'measured' && sign.key === key) === true
      ? []
      : [`tells of "${key}", which is no sign of its cause`];
  });

/** What is wrong with a phrase, by itself. */
export const checkPhrase = (
  phrase: Phrase,
  cause: Cause | null,
  ids: readonly string[],
): readonly string[] => {
  const bare = phrase.text.replaceAll(/\{[^}]*\}/g, '').replaceAll(/\[\[(.*?)\]\]/gs, '$1');
  const outside = phrase.text.replaceAll(/\[\[.*?\]\]/gs, '');
  return [
    ...(phrase.text.trim() === '' ? ['has no words'] : []),
    ...(/[{}[\]]/.test(bare) ? ['has a brace or a bracket too many'] : []),
    ...ofVariables(phrase, cause),
    ...sidesInWords([bare]).map(() => 'says lead or trail to a student'),
    ...codesInWords([bare], ids).map(() => 'has a code in it'),
    ...(cause !== null && injury.test(bare) ? ['speaks of an injury'] : []),
    ...(phrase.kind === 'shows' && variablesIn(outside).some((name) => name.includes(':'))
      ? ['cannot be said without its figure']
      : []),
  ];
};

/** A cause has its phrases: one a view that shows it, why for each of its misses, what to try unseen, and praise. */
export const checkPhrasesOf = (cause: Cause, all: readonly Phrase[]): readonly string[] => {
  const own = all.filter(({ causes = [] }) => causes.includes(cause.id));
  const has = (kind: Phrase['kind'], fits: (phrase: Phrase) => boolean): boolean =>
    own.some((phrase) => phrase.kind === kind && fits(phrase));
  const inView = (view: CameraView) => (phrase: Phrase) => phrase.views?.includes(view) ?? true;
  const evident = ({ when, seen }: Phrase) => when?.side === 'within' || seen?.answer === 'no';
  const shownIn = views.filter((view) =>
    cause.signs.some((sign) => sign.view === view || sign.view === 'either'),
  );
  return [
    ...shownIn
      .filter((view) => !has('shows', inView(view)))
      .map((view) => `has no phrase for what is seen ${view}`),
    ...faults
      .filter((fault) => cause.brings[fault] !== undefined)
      .filter((fault) => !has('why', (phrase) => phrase.faults?.includes(fault) ?? true))
      .map((fault) => `has no phrase for why it makes "${fault}"`),
    ...views
      .filter((view) => cause.unseen[view] !== undefined)
      .filter((view) => !has('unseen', (phrase) => phrase.views?.includes(view) === true))
      .map((view) => `has no phrase for what to try unseen ${view}`),
    ...own
      .filter(({ kind, text }) => kind === 'unseen' && variablesIn(text).some((name) => name.includes(':')))
      .map(({ id }) => `"${id}" tells of a measurement that was not made`),
    ...(has('praise', evident) ? [] : ['has no praise that rests on something']),
    ...own
      .filter((phrase) => phrase.kind === 'praise' && !evident(phrase))
      .map(({ id }) => `"${id}" praises what was not looked at`),
  ];
};
