import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../../http/read-me.ts';
import { readPage } from '../../../../http/read-page.ts';
import { replyWords } from '../../../../words/reply.ts';
import { Reply } from './_components/reply.tsx';

export const metadata = { title: replyWords.title };

export default async function Page({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const path = `/replies/${id}`;
  const { student } = await requireRole(path, ['student', 'coach', 'manager']);
  const read = await readPage(path, async (api) => {
    const reply = await answerOf(api.GET('/api/replies/{id}', { params: { path: { id } } }));
    if (student !== null) return { reply, hand: student.hand };
    const of = { params: { path: { id: reply.submissionId } } };
    const submission = await answerOf(api.GET('/api/submissions/{id}', of));
    return { reply, hand: submission.student.hand };
  });
  return (
    <main id="content" className="page">
      <Reply reply={read.reply} hand={read.hand} isReader={student !== null} />
    </main>
  );
}
