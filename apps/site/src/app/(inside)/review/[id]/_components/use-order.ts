'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';

type First = Pick<Reply<'openReview'>, 'heldBack' | 'named' | 'baseRates'>;

/** The order of causes: held back on a blind turn until a cause is named or the coach cannot tell; what was named stays known. */
export const useOrder = (id: string, first: First) => {
  const [heldBack, setHeldBack] = useState(first.heldBack);
  const [named, setNamed] = useState(first.named);
  const [arrived, setArrived] = useState(false);
  const { busy, trouble, run } = useSending();

  const reveal = useCallback(() => {
    setHeldBack(false);
    setArrived(true);
  }, []);
  /** A cause was chosen: from now on the order is shown. */
  const chosen = useCallback(
    ({ chosenCause, blind }: Reply<'chooseDiagnosis'>) => {
      if (blind) setNamed(chosenCause);
      if (heldBack) reveal();
    },
    [heldBack, reveal],
  );
  const cannotTell = async () => {
    const done = await run(() =>
      answerOf(api.POST('/api/submissions/{id}/order', { params: { path: { id } } })),
    );
    if (done !== null) reveal();
  };
  return { heldBack, named, arrived, busy, trouble, chosen, cannotTell, baseRates: first.baseRates };
};

export type Order = ReturnType<typeof useOrder>;
