import { answerOf } from '@ballfirst/contracts/client';
import { everyDrill } from '@ballfirst/library/cautions';
import { redirect } from 'next/navigation';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { lineTestWords } from '../../../words/line-test.ts';
import { LineTest } from './_components/line-test.tsx';

export const metadata = { title: lineTestWords.title };

export default async function Page() {
  const { student } = await requireRole('/line-test', ['student']);
  if (student === null) redirect('/');
  const params = { path: { id: student.id } };
  const tests = await readPage('/line-test', (api) =>
    answerOf(api.GET('/api/students/{id}/line-tests', { params })),
  );
  return (
    <main id="content" className="page">
      <LineTest studentId={student.id} hand={student.hand} first={tests} cautions={everyDrill} />
    </main>
  );
}
