'use client';
import { answerOf } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { reviewWords } from '../../../../../words/review.ts';

type Props = {
  submissionId: string;
  leavesAt: string | null;
  onUndo: () => void;
  onLeft: () => void;
};

const lookEveryMs = 2000;
const mostSeconds = 30;

/** A reply on its way: how long it can be taken back, then whether it has gone out. */
export function Leaving({ submissionId, leavesAt, onUndo, onLeft }: Props) {
  const [now, setNow] = useState(() => Date.now());
  // A device whose clock is wrong says no nonsense.
  const left = leavesAt === null ? 0 : Math.ceil((Date.parse(leavesAt) - now) / 1000);
  const seconds = Math.min(mostSeconds, Math.max(0, left));

  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  useEffect(() => {
    const timer = setInterval(async () => {
      const of = { params: { path: { id: submissionId } } };
      const { status } = await answerOf(api.GET('/api/submissions/{id}', of)).catch(() => ({ status: '' }));
      if (status === 'answered') onLeft();
    }, lookEveryMs);
    return () => clearInterval(timer);
  }, [submissionId, onLeft]);

  return (
    <div className="notice row apart">
      <p role="status">{seconds > 0 ? reviewWords.leaves : reviewWords.leavesNow}</p>
      <div className="row">
        {seconds > 0 && <span className="soft small">{reviewWords.secondsLeft(seconds)}</span>}
        <button type="button" onClick={onUndo}>
          {reviewWords.undo}
        </button>
        <Link href="/inbox" className="button plain">
          {reviewWords.nextSwing}
        </Link>
      </div>
    </div>
  );
}
