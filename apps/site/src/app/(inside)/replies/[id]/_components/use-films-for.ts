'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';

type Film = NonNullable<Reply<'readReply'>['teachingClip']>;

/** The films that may go with a sent reply: the one that went with it, and what the academy keeps for the causes it names. */
export const useFilmsFor = (
  { causes, teachingClip: held }: Pick<Reply<'readReply'>, 'causes' | 'teachingClip'>,
  wanted: boolean,
): readonly Film[] => {
  const [kept, setKept] = useState<readonly Film[]>([]);
  useEffect(() => {
    if (!wanted) return;
    answerOf(api.GET('/api/library/teaching-clips')).then(
      ({ items }) => setKept(items),
      () => undefined,
    );
  }, [wanted]);
  const others = kept.filter(({ cause }) => causes.includes(cause) && cause !== held?.cause);
  return held === null ? others : [held, ...others];
};
