import { ChosenDiagnosis } from '@ballfirst/contracts/http/review';
import type { z } from 'zod';

/** A chosen diagnosis as the contract says it. */
export const diagnosisOf = (row: {
  readonly id: string;
  readonly fault: string;
  readonly chosenCause: string;
  readonly setUpTicks: readonly string[];
  readonly overruled: boolean;
  readonly blind: boolean;
  readonly by: string;
  readonly at: Date | string;
}): z.output<typeof ChosenDiagnosis> => ChosenDiagnosis.parse({ ...row, at: new Date(row.at).toISOString() });
