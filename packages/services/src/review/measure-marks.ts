import { readLearnedRow } from '@ballfirst/db/reads/learned';
import { evidenceOf } from '@ballfirst/diagnosis/evidence-of';
import { requireStaff } from '../authorise.ts';
import { baseRatesOf } from '../learning/base-rates-of.ts';
import type { Call, Reply } from '../operation-types.ts';
import { checkApart } from './check-apart.ts';
import { checkMarks, checkObservations, checkTrail, lastOfEach } from './check-marks.ts';
import { checkFrameTimes } from './check-picture.ts';

/**
 * What marks and observations show, by the same code that stores them and with the academy's own rates. Nothing is stored.
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
  const { academyId, resources } = ctx;
  const learned = await readLearnedRow(resources.db, {
    ...{ academyId, submissionId: null, now: resources.clock.now() },
  });
  const marked = {
    ...{ marks, observations, picture, setting, set },
    trail: lastOfEach(trail, ({ frame }) => String(frame)),
  };
  return evidenceOf(fault, marked, baseRatesOf(learned));
};
