import type { StudentLine } from './student-line.ts';
import { quillmereOnTrial } from './students/quillmere-on-trial.ts';
import { quillmereOthers } from './students/quillmere-others.ts';
import { saltbarrowStudents } from './students/saltbarrow.ts';
import { tannhollowStudents } from './students/tannhollow.ts';

/** The students of the demo, by academy: who they are, how they came and what they live through. */
export const studentsOf: Readonly<Record<string, readonly StudentLine[]>> = {
  quillmere: [...quillmereOnTrial, ...quillmereOthers],
  saltbarrow: saltbarrowStudents,
  tannhollow: tannhollowStudents,
};
