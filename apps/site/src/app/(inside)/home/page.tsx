import { answerOf } from '@ballfirst/contracts/client';
import { redirect } from 'next/navigation';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { homeWords } from '../../../words/home.ts';
import { Home } from './_components/home.tsx';

export const metadata = { title: homeWords.title };

export default async function Page() {
  const { student } = await requireRole('/home', ['student']);
  if (student === null) redirect('/');
  const home = await readPage('/home', (api) => answerOf(api.GET('/api/home')));
  return (
    <main id="content" className="page">
      <Home first={home} hand={student.hand} studentId={student.id} />
    </main>
  );
}
