'use client';
import { shellWords } from '../words/shell.ts';

export default function Failed({ retry }: { retry: () => void }) {
  return (
    <main id="content" className="page">
      <h1>{shellWords.failed.title}</h1>
      <p role="alert">{shellWords.failed.text}</p>
      <p>
        <button type="button" className="main" onClick={() => retry()}>
          {shellWords.failed.again}
        </button>
      </p>
    </main>
  );
}
