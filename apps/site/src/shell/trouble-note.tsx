'use client';
import { usePathname, useSearchParams } from 'next/navigation';
import type { Trouble } from '../http/trouble.ts';
import { shellWords } from '../words/shell.ts';

/** A problem in words; signed out in the middle of something: with the way back. */
export function TroubleNote({ trouble }: { trouble: Trouble | null }) {
  const path = usePathname();
  const query = useSearchParams().toString();
  if (trouble === null) return <div role="alert" />;
  // What is said of one field alone is often the whole sentence: it stands once.
  const fields = trouble.fields.filter(({ message }) => message !== trouble.words);
  const here = query === '' ? path : `${path}?${query}`;
  return (
    <div role="alert" className="notice look stack tight">
      <p>{trouble.words}</p>
      {fields.length > 0 && (
        <ul>
          {fields.map((field) => (
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
