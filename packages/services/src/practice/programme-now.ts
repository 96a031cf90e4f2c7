import type { Tx } from '@ballfirst/db/with-academy';
import type { Reply } from '../operation-types.ts';
import { overCorrectionOf } from './over-correction-of.ts';
import { type FullProgramme, handOf, programmeOf } from './programme-of.ts';

/** A programme as it stands now, with what its drill may have brought too much of. */
export const programmeNow = async (tx: Tx, row: FullProgramme): Promise<Reply<'readProgramme'>> =>
  programmeOf(row, await overCorrectionOf(tx, row, handOf(row.student)));
