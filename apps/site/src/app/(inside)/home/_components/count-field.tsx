'use client';
import { useId } from 'react';
import { practiceWords } from '../../../../words/practice.ts';
import styles from './home.module.css';

type Props = {
  label: string;
  value: number | null;
  least?: number;
  most: number;
  /** One cell to tap for each number, instead of stepping. */
  cells?: boolean;
  onChange: (value: number) => void;
};

/** A small whole number for a thumb with a glove on. */
export function CountField({ label, value, least = 1, most, cells = false, onChange }: Props) {
  const id = useId();
  if (cells) {
    return (
      <fieldset>
        <legend>{label}</legend>
        <div className={styles.cells}>
          {Array.from({ length: most - least + 1 }, (_, index) => least + index).map((count) => (
            <label key={count} className={`choice ${styles.cell}`}>
              <input
                type="radio"
                name={id}
                className={styles.cellInput}
                checked={value === count}
                onChange={() => onChange(count)}
              />
              {count}
            </label>
          ))}
        </div>
      </fieldset>
    );
  }
  const step = (by: number) => onChange(Math.min(most, Math.max(least, (value ?? least) + by)));
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <div className={styles.stepper}>
        <button
          type="button"
          aria-label={`${label}: ${practiceWords.fewer}`}
          disabled={value !== null && value <= least}
          onClick={() => step(-1)}
        >
          −
        </button>
        <input
          id={id}
          type="number"
          inputMode="numeric"
          min={least}
          max={most}
          value={value ?? ''}
          onChange={(event) => {
            const typed = event.target.valueAsNumber;
            if (Number.isInteger(typed) && typed >= least && typed <= most) onChange(typed);
          }}
        />
        <button
          type="button"
          aria-label={`${label}: ${practiceWords.more}`}
          disabled={value !== null && value >= most}
          onClick={() => step(1)}
        >
          +
        </button>
      </div>
    </div>
  );
}
