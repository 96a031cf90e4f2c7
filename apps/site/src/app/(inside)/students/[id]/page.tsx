import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../../http/read-me.ts';
import { readPage } from '../../../../http/read-page.ts';
import { studentsWords } from '../../../../words/students.ts';
import { Student } from './_components/student.tsx';

export const metadata = { title: studentsWords.columns.name };

export default async function Page({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const path = `/students/${id}`;
  const me = await requireRole(path, ['coach', 'manager']);
  const [student, swings, about] = await readPage(path, (api) =>
    Promise.all([
      answerOf(api.GET('/api/students/{id}', { params: { path: { id } } })),
      answerOf(api.GET('/api/submissions', { params: { query: { studentId: id } } })),
      answerOf(api.GET('/api/students/{id}/about', { params: { path: { id } } })),
    ]),
  );
  return (
    <main id="content" className="page">
      <Student first={student} about={about} swings={swings.items} mayChange={me.role === 'manager'} />
    </main>
  );
}
