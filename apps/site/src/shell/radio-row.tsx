'use client';
import { useId } from 'react';

type Props<T extends string> = {
  legend: string;
  hint?: string;
  names: Readonly<Record<T, string>>;
  order: readonly T[];
  value: T | null;
  onChange: (value: T) => void;
  disabled?: boolean;
};

/** One of a few: each choice is a whole cell to tap. */
export function RadioRow<T extends string>(props: Props<T>) {
  const { legend, hint, names, order, value, onChange, disabled = false } = props;
  const id = useId();
  return (
    <fieldset disabled={disabled} {...(hint !== undefined && { 'aria-describedby': `${id}-hint` })}>
      <legend>{legend}</legend>
      {hint !== undefined && (
        <p id={`${id}-hint`} className="hint">
          {hint}
        </p>
      )}
      <div className="choices">
        {order.map((one) => (
          <label key={one} className="choice">
            <input type="radio" name={id} checked={value === one} onChange={() => onChange(one)} />
            {names[one]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
