import type { Programme } from '../../../../drill-card/rung-states.ts';
import { practiceWords } from '../../../../words/practice.ts';

const looks = { passed: 'good', stay: '', back: 'look', hold: 'safety' } as const;

/** What the entry means, in words: passed, stay, one back, or stop. */
export function VerdictNote({ entry }: { entry: Programme['entries'][number] }) {
  return (
    <div className={`notice stack tight ${looks[entry.verdict]}`} role="status" data-verdict={entry.verdict}>
      <strong>{practiceWords.verdicts[entry.verdict]}</strong>
      <p>{entry.words}</p>
    </div>
  );
}
