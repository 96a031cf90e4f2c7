type Props = { label: string; hint: string | null; kind: 'new-password' | 'current-password' };

/** A password, named `password` in its form. */
export function PasswordField({ label, hint, kind }: Props) {
  return (
    <div className="field">
      <label htmlFor="password">{label}</label>
      <input
        id="password"
        type="password"
        name="password"
        autoComplete={kind}
        required
        minLength={10}
        maxLength={200}
        {...(hint !== null && { 'aria-describedby': 'password-hint' })}
      />
      {hint !== null && (
        <span id="password-hint" className="hint">
          {hint}
        </span>
      )}
    </div>
  );
}
