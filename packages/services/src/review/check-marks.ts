import { ProblemError } from '@ballfirst/contracts/problems';
import { observationByKey } from '@ballfirst/library/observations';
import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import { checkMark, MarkOutsideError } from '@ballfirst/swing/marks/check-mark';
import type { Mark, Picture } from '@ballfirst/swing/marks/marks';

/** @throws ProblemError mark-outside-frame, with the sentence that says which mark */
export const checkMarks = (marks: readonly Mark[], picture: Picture, path = 'marks'): void => {
  for (const [index, mark] of marks.entries()) {
    try {
      checkMark(mark, picture);
    } catch (error) {
      if (!(error instanceof MarkOutsideError)) throw error;
      const message = `${error.message} Place it again.`;
      throw new ProblemError('mark-outside-frame', message, [{ path: `${path}.${index}`, message }]);
    }
  }
};

/** The clubhead over frames is marked like any other point. @throws ProblemError mark-outside-frame */
export const checkTrail = (trail: readonly ClubheadPixel[], picture: Picture): void =>
  checkMarks(
    trail.map((one) => ({ ...one, position: 'impact', point: 'clubhead', source: 'coach' })),
    picture,
    'trail',
  );

/** @throws ProblemError bad-request for an observation the library does not know */
export const checkObservations = (observations: readonly { readonly key: string }[]): void => {
  for (const [index, { key }] of observations.entries()) {
    if (observationByKey(key) !== undefined) continue;
    throw new ProblemError('bad-request', undefined, [
      { path: `observations.${index}.key`, message: 'This observation is not in the library.' },
    ]);
  }
};

/** Of several for one place the last one counts. */
export const lastOfEach = <T>(items: readonly T[], place: (item: T) => string): T[] => [
  ...new Map(items.map((item) => [place(item), item])).values(),
];
