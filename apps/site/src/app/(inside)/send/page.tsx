import { answerOf } from '@ballfirst/contracts/client';
import { redirect } from 'next/navigation';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { sendWords } from '../../../words/send.ts';
import { ConsentFirst } from './_components/consent-first.tsx';
import { PutRight } from './_components/put-right.tsx';
import { rungLengthOf } from './_components/rung-length.ts';
import { SendForm } from './_components/send-form.tsx';

export const metadata = { title: sendWords.title };

/** `for`: a submission whose video or answers are put right. `check-in`: the check-in this swing answers. */
type Search = Promise<{ for?: string; 'check-in'?: string }>;

export default async function Page({ searchParams }: { searchParams: Search }) {
  const search = await searchParams;
  const id = search.for;
  const path = id === undefined ? '/send' : `/send?for=${encodeURIComponent(id)}`;
  const { student } = await requireRole(path, ['student']);
  if (student === null) redirect('/');
  const guardian = await readPage(path, (api) => answerOf(api.GET('/api/me/guardian')));
  const junior = guardian.state !== 'not-needed';
  if (junior && guardian.state !== 'given') return <ConsentFirst first={guardian} />;
  if (id !== undefined) {
    const params = { path: { id } };
    const submission = await readPage(path, (api) => answerOf(api.GET('/api/submissions/{id}', { params })));
    return <PutRight submission={submission} studentId={student.id} />;
  }
  const { programme } = await readPage(path, (api) => answerOf(api.GET('/api/home')));
  const rungLength = rungLengthOf(programme?.rung ?? null);
  const checkInId = search['check-in'] ?? null;
  return <SendForm studentId={student.id} hand={student.hand} {...{ junior, checkInId, rungLength }} />;
}
