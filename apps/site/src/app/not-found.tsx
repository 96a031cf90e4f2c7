import Link from 'next/link';
import { shellWords } from '../words/shell.ts';

export const metadata = { title: shellWords.notFound.title };

export default function NotFound() {
  return (
    <main id="content" className="page">
      <h1>{shellWords.notFound.title}</h1>
      <p>{shellWords.notFound.text}</p>
      <p>
        <Link href="/">{shellWords.notFound.back}</Link>
      </p>
    </main>
  );
}
