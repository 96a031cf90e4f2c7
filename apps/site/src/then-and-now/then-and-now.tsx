'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../http/browser-api.ts';
import { ownTrialWords } from '../words/asking.ts';
import { momentForStudent } from '../words/moments-for-student.ts';
import { Side } from './side.tsx';
import styles from './then-and-now.module.css';

type Pair = NonNullable<Reply<'readThenAndNow'>['pair']>;
type Props = { submissionId: string; hand: 'right' | 'left' };

/** The first swing and this one at the same moment; nothing where no moment is marked in both. */
export function ThenAndNow({ submissionId, hand }: Props) {
  const [pair, setPair] = useState<Pair | null>(null);
  useEffect(() => {
    const params = { path: { id: submissionId } };
    let wanted = true;
    // What does not come is left out: the reply stands without it.
    answerOf(api.GET('/api/submissions/{id}/then-and-now', { params })).then(
      (answer) => wanted && setPair(answer.pair),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [submissionId]);
  if (pair === null) return null;
  return (
    <section className="stack tight no-print" aria-labelledby="then-and-now">
      <h2 id="then-and-now">{ownTrialWords.pairTitle}</h2>
      <p className="hint">{ownTrialWords.sameMoment(momentForStudent(pair.moment, hand))}</p>
      <div className={styles.pair}>
        <Side title={ownTrialWords.firstSwing} side={pair.first} />
        <Side title={ownTrialWords.thisSwing} side={pair.latest} />
      </div>
    </section>
  );
}
