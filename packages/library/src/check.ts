import { bands } from './bands.ts';
import { causes } from './causes.ts';
import { checkCause } from './check-cause.ts';
import { checkDrill } from './check-drill.ts';
import { sidesInWords, wordsOfCause, wordsOfDrill } from './check-words.ts';
import { drills } from './drills.ts';
import { observations } from './observations.ts';
import type { BandRow, Cause, Drill, Observation } from './types.ts';

export type LibraryContent = {
  readonly causes: readonly Cause[];
  readonly observations: readonly Observation[];
  readonly bands: readonly BandRow[];
  readonly drills: readonly Drill[];
};

/** The built-in library as one piece. */
export const builtIn: LibraryContent = { causes, observations, bands, drills };

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

/** Everything wrong with a library; an empty list is a sound one. An academy's own copies pass through here too. */
export const checkLibrary = (content: LibraryContent = builtIn): readonly LibraryProblem[] => {
  const causesById = new Map(content.causes.map((cause) => [cause.id, cause]));
  const shelf = {
    causeIds: new Set(causesById.keys()),
    drills: new Map(content.drills.map((drill) => [drill.id, drill])),
    observationKeys: new Set(content.observations.map((observation) => observation.key)),
    bandKeys: new Set(content.bands.map((band) => band.key)),
  };
  const found: LibraryProblem[] = [];
  const add = (where: string, problems: readonly string[]): void => {
    found.push(...problems.map((problem) => ({ where, problem })));
  };
  for (const cause of content.causes) {
    add(cause.id, checkCause(cause, shelf));
    add(
      cause.id,
      sidesInWords(wordsOfCause(cause)).map((words) => `says lead or trail to a student: ${words}`),
    );
  }
  for (const drill of content.drills) {
    add(drill.id, checkDrill(drill, causesById));
    add(
      drill.id,
      sidesInWords(wordsOfDrill(drill)).map((words) => `says lead or trail to a student: ${words}`),
    );
  }
  for (const band of content.bands) {
    if (band.low === null && band.high === null) add(band.key, ['is a band without an edge']);
    if (band.low !== null && band.high !== null && band.low >= band.high)
      add(band.key, ['is a band upside down']);
  }
  add(
    'causes',
    twice([...content.causes.map(({ id }) => id)]).map((id) => `"${id}" stands twice`),
  );
  add(
    'drills',
    twice([...content.drills.map(({ id }) => id)]).map((id) => `"${id}" stands twice`),
  );
  add(
    'causes',
    loops(content.causes).map((id) => `"${id}" leads back to itself`),
  );
  return found;
};
