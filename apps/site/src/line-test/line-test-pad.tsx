'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../http/browser-api.ts';
import { useOnceKey } from '../http/use-once-key.ts';
import { useSending } from '../http/use-sending.ts';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { lineTestWords, placeInWords } from '../words/line-test.ts';
import { LineDrawing, widestMm } from './line-drawing.tsx';
import styles from './line-test-pad.module.css';

type Tests = Reply<'listLineTests'>;
type Props = {
  studentId: string;
  units: 'metric' | 'imperial';
  hand: 'right' | 'left';
  onKept: (tests: Tests) => void;
};
const most = 10;
const fewest = 3;

/** Ten brushes, noted one by one: tapped on the drawing, or by slider and key. */
export function LineTestPad({ studentId, units, hand, onKept }: Props) {
  const [startsMm, setStartsMm] = useState<readonly number[]>([]);
  const [at, setAt] = useState(0);
  const [kept, setKept] = useState(false);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();
  const step = units === 'metric' ? 5 : 6.35;
  const full = startsMm.length >= most;
  const add = (mm: number) => {
    setKept(false);
    setStartsMm((now) => (now.length >= most ? now : [...now, Math.round(mm)]));
  };
  const save = async () => {
    const body = { startsMm: [...startsMm] };
    const params = { path: { id: studentId }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await run(() => answerOf(api.POST('/api/students/{id}/line-tests', { params, body })));
    if (done === null) return;
    once.answered();
    setStartsMm([]);
    setKept(true);
    onKept(done.answer);
  };
  return (
    <fieldset className="stack tight">
      <legend className="label">{lineTestWords.pad}</legend>
      <p className="hint">{lineTestWords.padHint}</p>
      <LineDrawing startsMm={startsMm} units={units} hand={hand} onTap={add} />
      <label className="field">
        <span>{lineTestWords.slider}</span>
        <input
          type="range"
          // The target lies to the left of a right-hander: the slider runs as the drawing does.
          dir={hand === 'right' ? 'rtl' : 'ltr'}
          min={-widestMm}
          max={widestMm}
          step={step}
          value={at}
          className={styles.slider}
          aria-valuetext={placeInWords(at, units)}
          onChange={(event) => setAt(Number(event.target.value))}
        />
        <span className="small">{placeInWords(at, units)}</span>
      </label>
      <div className="row">
        <button type="button" disabled={full} onClick={() => add(at)}>
          {lineTestWords.add}
        </button>
        <button
          type="button"
          className="plain"
          disabled={startsMm.length === 0}
          onClick={() => setStartsMm((now) => now.slice(0, -1))}
        >
          {lineTestWords.undo}
        </button>
      </div>
      <p role="status" className="small">
        {kept ? lineTestWords.saved : lineTestWords.noted(startsMm.length)}
        {startsMm.length > 0 && `: ${startsMm.map((mm) => placeInWords(mm, units)).join(', ')}`}
      </p>
      <TroubleNote trouble={trouble} />
      <p className="row">
        <button type="button" className="main" disabled={busy || startsMm.length < fewest} onClick={save}>
          {busy ? lineTestWords.saving : lineTestWords.save}
        </button>
        {startsMm.length < fewest && <span className="hint">{lineTestWords.three}</span>}
      </p>
    </fieldset>
  );
}
