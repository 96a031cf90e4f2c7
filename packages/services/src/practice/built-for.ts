import type { Student } from '@ballfirst/db/generated/client';
import type { BuiltFor } from './build-programme.ts';
import { meansFor } from './means-for.ts';

/** What of a student rules drills out. */
export const builtFor = (student: Parameters<typeof meansFor>[0] & Pick<Student, 'balls'>): BuiltFor => {
  const { pains, ageGroup } = meansFor(student, 'fairway');
  return { pains, ageGroup, balls: student.balls };
};
