import Link from 'next/link';

type Props = {
  words: { readonly further: string; readonly top: string };
  after: string | null;
  next: string | null;
  pathOf: (after: string | null) => string;
};

/** The next page of a list, and the way back to its head. */
export function Further({ words, after, next, pathOf }: Props) {
  if (after === null && next === null) return null;
  return (
    <nav className="row" aria-label={words.further}>
      {after !== null && <Link href={pathOf(null)}>{words.top}</Link>}
      {next !== null && <Link href={pathOf(next)}>{words.further}</Link>}
    </nav>
  );
}
