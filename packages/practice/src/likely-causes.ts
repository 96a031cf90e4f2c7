import type { RankedCause } from '@ballfirst/diagnosis/rank';
import type { Cause, FaultId } from '@ballfirst/library/types';
import type { LikelyCause } from './benefit.ts';

/** Causes less likely than this are not named as left out. Common practice, no source. */
const worthNaming = 0.5;

/**
 * The causes a programme is chosen for: the coach's first, then those of the ranking that are likely as well. A cause the
 * coach chose against the ranking counts as certain.
 *
 * @throws RangeError when the chosen cause does not exist
 */
export const likelyCauses = (choice: {
  readonly chosenCauseId: string;
  readonly fault: FaultId;
  readonly ranking: readonly RankedCause[];
  readonly causes: readonly Cause[];
}): readonly LikelyCause[] => {
  const { chosenCauseId, fault, ranking, causes } = choice;
  const weightOf = (id: string): number => causes.find((cause) => cause.id === id)?.brings[fault] ?? 1;
  if (!causes.some((cause) => cause.id === chosenCauseId)) {
    throw new RangeError(`No cause is called "${chosenCauseId}".`);
  }
  const others = ranking.filter(
    ({ causeId, probability }) => causeId !== chosenCauseId && probability >= worthNaming,
  );
  return [
    { id: chosenCauseId, probability: 1, weight: weightOf(chosenCauseId) },
    ...others.map(({ causeId, probability }) => ({
      id: causeId,
      probability,
      weight: weightOf(causeId),
    })),
  ];
};
