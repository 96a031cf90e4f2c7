import type { AcademyLine } from './academies.ts';
import { sentSteps } from './sent-in-block.ts';
import { type SwingStory, storyOf } from './story.ts';
import { studentsOf } from './students.ts';

/** One swing of one student, to be told in one go. */
export type Chapter = {
  /** The student, by the part of the address before the @. */
  readonly key: string;
  readonly told: When;
  readonly story: SwingStory;
};
/** Before anybody signs in; right after, since somebody waits for it; or when there is time. */
export type When = 'early' | 'soon' | 'later';

/** Enough to see the house at work at once: a pain, a swing that is late, ones for today and tomorrow, a reply. */
const early: ReadonlySet<string> = new Set(['edda', 'noor', 'ruben', 'piet', 'maren', 'sunniva']);
/** A trial that is about to end must not look unheard for long. */
const soon: ReadonlySet<string> = new Set(['finlo']);

/** Everything that happened at an academy, student by student, each in the order in which it happened. */
export const demoChapters = (academy: AcademyLine, now: Date): Chapter[] => {
  const sent = sentSteps(academy, now);
  return (studentsOf[academy.slug] ?? []).flatMap((line) => {
    const isSoon = line.lesson === undefined || soon.has(line.key);
    const told = early.has(line.key) ? 'early' : isSoon ? 'soon' : 'later';
    return storyOf(academy, line, now, sent).map((story) => ({ key: line.key, told, story }));
  });
};
