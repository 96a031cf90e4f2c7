'use client';
import { sendWords } from '../../../../words/send.ts';
import type { Draft } from './draft.ts';

type Props = {
  draft: Draft;
  hasClip: boolean;
  busy: boolean;
  goTo: (step: Draft['step']) => void;
  send: () => void;
};

/** On, back, and at the end the sending, with what is still missing in words. */
export function StepMoves({ draft, hasClip, busy, goTo, send }: Props) {
  if (draft.step !== 3) {
    const { step } = draft;
    return (
      <div className="row apart">
        {step === 1 ? (
          <span />
        ) : (
          <button type="button" onClick={() => goTo(1)}>
            {sendWords.back}
          </button>
        )}
        <button type="button" className="main" onClick={() => goTo(step === 1 ? 2 : 3)}>
          {sendWords.onwards}
        </button>
      </div>
    );
  }
  const missing = [
    ...(hasClip ? [] : [{ step: 1 as const, words: sendWords.needsVideo }]),
    ...(draft.taps.length > 0 ? [] : [{ step: 2 as const, words: sendWords.tapOne }]),
  ];
  return (
    <div className="stack">
      {missing.length > 0 && (
        <ul className="notice look stack tight">
          {missing.map(({ step, words }) => (
            <li key={step}>
              <button type="button" className="plain" onClick={() => goTo(step)}>
                {words}
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="row apart">
        <button type="button" onClick={() => goTo(2)}>
          {sendWords.back}
        </button>
        <button
          type="button"
          className="main"
          disabled={busy || missing.length > 0 || draft.pain === null}
          onClick={send}
        >
          {busy ? sendWords.sending : sendWords.send}
        </button>
      </div>
      {draft.pain === null && <p className="hint">{sendWords.painFirst}</p>}
    </div>
  );
}
