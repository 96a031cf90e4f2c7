import { evidenceOf } from '@ballfirst/diagnosis/evidence-of';
import { requireStaff } from '../authorise.ts';
import type { Call, Reply } from '../operation-types.ts';
import { checkApart } from './check-apart.ts';
import { checkMarks, checkObservations, checkTrail, lastOfEach } from './check-marks.ts';
import { checkFrameTimes } from './check-picture.ts';

/**
 * What marks and observations show, by the same code that stores them. Nothing is stored.
 * @throws ProblemError bad-request, mark-outside-frame
 */
export const measureMarks = async ({ ctx, input }: Call<'measureMarks'>): Promise<Reply<'measureMarks'>> => {
  requireStaff(ctx);
  const { fault, setting, picture, marks, trail = [], set = null } = input;
  checkFrameTimes(picture);
  checkMarks(marks, picture);
  checkTrail(trail, picture);
  checkApart(marks);
  checkObservations(input.observations);
  const observations = lastOfEach(input.observations, ({ key }) => key);
  return evidenceOf(fault, {
    marks,
    observations,
    trail: lastOfEach(trail, ({ frame }) => String(frame)),
    picture,
    setting,
    set,
  });
};
