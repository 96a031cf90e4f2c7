import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../../http/read-me.ts';
import { readPage } from '../../../../http/read-page.ts';
import { reviewWords } from '../../../../words/review.ts';
import { Review } from './_components/review.tsx';

export const metadata = { title: reviewWords.replyTitle };

export default async function Page({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const path = `/review/${id}`;
  const me = await requireRole(path, ['coach', 'manager']);
  const [review, drills] = await readPage(path, (api) =>
    Promise.all([
      answerOf(api.GET('/api/submissions/{id}/review', { params: { path: { id } } })),
      answerOf(api.GET('/api/library/drills')),
    ]),
  );
  return (
    <main id="content" className="page wide">
      <Review first={review} drills={drills.items} membershipId={me.membershipId} role={me.role} />
    </main>
  );
}
