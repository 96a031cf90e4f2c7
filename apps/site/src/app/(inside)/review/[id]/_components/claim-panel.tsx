'use client';
import Link from 'next/link';
import type { Trouble } from '../../../../../http/trouble.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { reviewWords } from '../../../../../words/review.ts';
import type { Submission } from './use-claim.ts';

type Props = {
  submission: Submission;
  mine: boolean;
  busy: boolean;
  trouble: Trouble | null;
  onClaim: () => void;
  onRelease: () => void;
};

/** Who has this swing, and the way to take it. */
export function ClaimPanel({ submission, mine, busy, trouble, onClaim, onRelease }: Props) {
  const { claim, status, replyId } = submission;
  if (status === 'answered') {
    return (
      <p className="notice good">
        {reviewWords.answered}{' '}
        {replyId !== null && <Link href={`/replies/${replyId}`}>{reviewWords.seeReply}</Link>}
      </p>
    );
  }
  return (
    <div className="stack tight">
      {status !== 'waiting' && <p className="notice">{reviewWords.notWaiting}</p>}
      {status === 'waiting' && claim === null && (
        <div className="row notice">
          <button type="button" className="main" disabled={busy} onClick={onClaim}>
            {reviewWords.claim}
          </button>
          <span>{reviewWords.claimFirst}</span>
        </div>
      )}
      {claim !== null && !mine && <p className="notice look">{reviewWords.taken(claim.name)}</p>}
      {mine && (
        <p className="row small soft">
          {reviewWords.yours}
          <button type="button" className="plain small-button" disabled={busy} onClick={onRelease}>
            {reviewWords.release}
          </button>
        </p>
      )}
      <TroubleNote trouble={trouble} />
    </div>
  );
}
