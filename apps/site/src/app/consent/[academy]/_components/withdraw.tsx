'use client';
import { useState } from 'react';
import { guardianWords } from '../../../../words/guardian.ts';

/** Withdrawing asks once: what was sent and not answered leaves the coaches with it. */
export function Withdraw({ busy, onWithdraw }: { busy: boolean; onWithdraw: () => void }) {
  const [asks, setAsks] = useState(false);
  if (!asks) {
    return (
      <p className="ruled">
        <button type="button" className="plain" onClick={() => setAsks(true)}>
          {guardianWords.withdraw}
        </button>
      </p>
    );
  }
  return (
    <div className="notice look stack tight" role="alert">
      <p>{guardianWords.withdrawWhat}</p>
      <div className="row">
        <button type="button" disabled={busy} onClick={onWithdraw}>
          {guardianWords.withdrawSure}
        </button>
        <button type="button" className="plain" onClick={() => setAsks(false)}>
          {guardianWords.cancel}
        </button>
      </div>
    </div>
  );
}
