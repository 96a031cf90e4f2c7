'use client';
import { usePathname, useSearchParams } from 'next/navigation';
import type { Trouble } from '../http/trouble.ts';
import { shellWords } from '../words/shell.ts';

/** A problem in words; signed out in the middle of something: with the way back. */
export function TroubleNote({ trouble }: { trouble: Trouble | null }) {
  const path = usePathname();
  const query = useSearchParams().toString();
  if (trouble === null) return <div role="alert" />;
  const here = query === '' ? path : `${path}?${query}`;
  return (
    <div role="alert" className="notice look stack tight">
      <p>{trouble.words}</p>
      {trouble.fields.length > 0 && (
        <ul>
          {trouble.fields.map((field) => (
            <li key={`${field.path} ${field.message}`}>{field.message}</li>
          ))}
        </ul>
      )}
      {trouble.code === 'not-signed-in' && (
        <p>
          <a href={`/sign-in?next=${encodeURIComponent(here)}`}>{shellWords.signInAgain}</a>
        </p>
      )}
    </div>
  );
}
