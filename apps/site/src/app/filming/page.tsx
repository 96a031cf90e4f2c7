import { everyDrill } from '@ballfirst/library/cautions';
import Link from 'next/link';
import { readMe } from '../../http/read-me.ts';
import { filmingWords } from '../../words/filming.ts';
import { Guide } from './_components/guide.tsx';

export const metadata = { title: filmingWords.title };

/** Open to everybody: a letter may lead here too. */
export default async function Page() {
  const student = (await readMe())?.student ?? null;
  return (
    <main id="content" className="page">
      <div>
        <h1>{filmingWords.title}</h1>
        <p>{filmingWords.lead}</p>
      </div>
      <Guide known={student?.hand ?? null} cautions={everyDrill} />
      {student !== null && (
        <p>
          <Link href="/send" className="button main">
            {filmingWords.send}
          </Link>
        </p>
      )}
    </main>
  );
}
