import { bands } from '../bands.ts';
import { causes } from '../causes.ts';
import { cautionSentences } from '../cautions.ts';
import { drills } from '../drills.ts';
import { observations } from '../observations.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { phrases } from '../phrases.ts';
import type { BandRow, Cause, Drill, Observation } from '../types.ts';
import { checkBand } from './check-band.ts';
import { checkCause } from './check-cause.ts';
import { checkDrill } from './check-drill.ts';
import { checkPhrase, checkPhrasesOf } from './check-phrases.ts';
import { bodyInCue, codesInWords, sidesInWords, wordsOfCause, wordsOfDrill } from './check-words.ts';

export type LibraryContent = {
  readonly causes: readonly Cause[];
  readonly observations: readonly Observation[];
  readonly bands: readonly BandRow[];
  readonly drills: readonly Drill[];
  readonly phrases: readonly Phrase[];
  /** Sentences of safety that a drill may carry. */
  readonly cautions: readonly string[];
};

/** The built-in library as one piece. */
export const builtIn: LibraryContent = {
  causes,
  observations,
  bands,
  drills,
  phrases,
  cautions: cautionSentences,
};

/** Where the problem is (an id) and what it is. */
export type LibraryProblem = { readonly where: string; readonly problem: string };

const twice = (ids: readonly string[]): readonly string[] => ids.filter((id, at) => ids.indexOf(id) !== at);

const loops = (all: readonly Cause[]): readonly string[] => {
  const next = new Map(all.map((cause) => [cause.id, Object.keys(cause.leadsTo)]));
  const reaches = (from: string, to: string, seen: Set<string>): boolean =>
    (next.get(from) ?? []).some((id) => {
      if (id === to) return true;
      if (seen.has(id)) return false;
      seen.add(id);
      return reaches(id, to, seen);
    });
  return all.filter((cause) => reaches(cause.id, cause.id, new Set())).map((cause) => cause.id);
};

/** What nothing asks for: it would never be seen. */
const orphans = ({
  causes: all,
  drills: exercises,
  observations: taps,
}: LibraryContent): readonly LibraryProblem[] => {
  const asked = new Set(all.flatMap(({ signs }) => signs.map(({ key }) => key)));
  const used = new Set(all.flatMap((cause) => cause.drills));
  return [
    ...taps
      .filter(({ key }) => !asked.has(key))
      .map(({ key }) => ({ where: key, problem: 'is no sign of any cause' })),
    ...exercises
      .filter(({ id }) => !used.has(id))
      .map(({ id }) => ({ where: id, problem: 'is asked for by no cause' })),
  ];
};

/** Everything wrong with a library; an empty list is a sound one. An academy's own copies pass through here too. */
export const checkLibrary = (content: LibraryContent = builtIn): readonly LibraryProblem[] => {
  const causesById = new Map(content.causes.map((cause) => [cause.id, cause]));
  const shelf = {
    causeIds: new Set(causesById.keys()),
    drills: new Map(content.drills.map((drill) => [drill.id, drill])),
    observationKeys: new Set(content.observations.map((observation) => observation.key)),
    bandKeys: new Set(content.bands.map((band) => band.key)),
  };
  const cautions = new Set(content.cautions);
  const ids = [...content.causes, ...content.drills].map(({ id }) => id).filter((id) => id.includes('-'));
  const found: LibraryProblem[] = [...orphans(content)];
  const add = (where: string, problems: readonly string[]): void => {
    found.push(...problems.map((problem) => ({ where, problem })));
  };
  const addWords = (where: string, words: readonly string[]): void => {
    add(
      where,
      sidesInWords(words).map((one) => `says lead or trail to a student: ${one}`),
    );
    add(
      where,
      codesInWords(words, ids).map((one) => `has a code in: ${one}`),
    );
  };
  for (const cause of content.causes) {
    add(cause.id, checkCause(cause, shelf));
    addWords(cause.id, wordsOfCause(cause));
    add(cause.id, checkPhrasesOf(cause, content.phrases));
  }
  for (const drill of content.drills) {
    add(drill.id, checkDrill(drill, causesById, cautions));
    addWords(drill.id, wordsOfDrill(drill));
    if (bodyInCue(drill.feel)) add(drill.id, ['gives a cue about the body']);
  }
  for (const phrase of content.phrases) {
    const [id] = phrase.causes ?? [];
    add(phrase.id, checkPhrase(phrase, id === undefined ? null : (causesById.get(id) ?? null), ids));
  }
  add(
    'phrases',
    twice(content.phrases.map(({ id }) => id)).map((id) => `"${id}" stands twice`),
  );
  add('bands', content.bands.flatMap(checkBand));
  add(
    'causes',
    twice(content.causes.map(({ id }) => id)).map((id) => `"${id}" stands twice`),
  );
  add(
    'drills',
    twice(content.drills.map(({ id }) => id)).map((id) => `"${id}" stands twice`),
  );
  add(
    'causes',
    loops(content.causes).map((id) => `"${id}" leads back to itself`),
  );
  return found;
};
