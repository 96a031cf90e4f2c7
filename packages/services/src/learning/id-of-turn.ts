import { newId } from '@ballfirst/db/ids';
import { blindTurn } from '@ballfirst/diagnosis/blind-turn';

/** A new id of a swing whose order is held back, or is not: for the demo and for tests, which leave nothing to chance. */
export const idOfTurn = (isBlind: boolean): string => {
  for (;;) {
    const id = newId();
    if (blindTurn(id) === isBlind) return id;
  }
};
