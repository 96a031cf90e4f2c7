import type { Reply } from '@ballfirst/contracts/client';
import { lineTestWords, placeInWords } from '../words/line-test.ts';
import { LineDrawing } from './line-drawing.tsx';

type Props = {
  test: Reply<'listLineTests'>['items'][number];
  units: 'metric' | 'imperial';
  hand: 'right' | 'left';
};

/** One line test: its brushes drawn, how many began behind the line, and the mean with its doubt. */
export function LineTestResult({ test, units, hand }: Props) {
  const { startsMm, behind, meanStartMm, lowMm, highMm } = test;
  return (
    <div className="stack tight">
      <LineDrawing startsMm={startsMm} units={units} hand={hand} mean={test} />
      <p className="small">
        <strong>{lineTestWords.behindOf(behind, startsMm.length)}</strong>{' '}
        {lineTestWords.mean(
          placeInWords(meanStartMm, units),
          placeInWords(lowMm, units),
          placeInWords(highMm, units),
        )}
      </p>
    </div>
  );
}
