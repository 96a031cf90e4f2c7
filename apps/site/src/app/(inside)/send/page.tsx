import { answerOf } from '@ballfirst/contracts/client';
import { redirect } from 'next/navigation';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { sendWords } from '../../../words/send.ts';
import { PutRight } from './_components/put-right.tsx';
import { SendForm } from './_components/send-form.tsx';

export const metadata = { title: sendWords.title };

/** `for`: a submission whose video must be put right. `check-in`: the check-in this swing answers. */
type Search = Promise<{ for?: string; 'check-in'?: string }>;

export default async function Page({ searchParams }: { searchParams: Search }) {
  const search = await searchParams;
  const id = search.for;
  const path = id === undefined ? '/send' : `/send?for=${encodeURIComponent(id)}`;
  const { student } = await requireRole(path, ['student']);
  if (student === null) redirect('/');
  if (id === undefined) {
    return <SendForm studentId={student.id} hand={student.hand} checkInId={search['check-in'] ?? null} />;
  }
  const submission = await readPage(path, (api) =>
    answerOf(api.GET('/api/submissions/{id}', { params: { path: { id } } })),
  );
  return <PutRight submission={submission} studentId={student.id} />;
}
