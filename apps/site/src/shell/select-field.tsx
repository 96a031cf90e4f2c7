'use client';

type Props<T extends string> = {
  label: string;
  names: Readonly<Record<T, string>>;
  order: readonly T[];
  value: T;
  onChange: (value: T) => void;
  disabled?: boolean;
};

/** One of many, in the platform's own list. */
export function SelectField<T extends string>(props: Props<T>) {
  const { label, names, order, value, onChange, disabled = false } = props;
  return (
    <label className="field">
      <span>{label}</span>
      <select
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const chosen = order.find((one) => one === event.target.value);
          if (chosen !== undefined) onChange(chosen);
        }}
      >
        {order.map((one) => (
          <option key={one} value={one}>
            {names[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
