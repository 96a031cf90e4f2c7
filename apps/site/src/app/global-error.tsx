'use client';
import '../look/tokens.css';
import '../look/paper.css';
import '../look/controls.css';
import { shellWords } from '../words/shell.ts';

export default function HouseFailed({ retry }: { retry: () => void }) {
  return (
    <html lang="en">
      <body>
        <title>{shellWords.failed.title}</title>
        <main className="page">
          <h1>{shellWords.failed.title}</h1>
          <p role="alert">{shellWords.failed.text}</p>
          <p>
            <button type="button" className="main" onClick={() => retry()}>
              {shellWords.failed.again}
            </button>
          </p>
        </main>
      </body>
    </html>
  );
}
