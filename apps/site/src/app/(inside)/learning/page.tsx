import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { learningWords } from '../../../words/learning.ts';
import { Learning } from './_components/learning.tsx';

export const metadata = { title: learningWords.title };

export default async function Page() {
  const { role } = await requireRole('/learning', ['coach', 'manager']);
  const learning = await readPage('/learning', (api) => answerOf(api.GET('/api/settings/learning')));
  return (
    <main id="content" className="page">
      <div>
        <h1>{learningWords.title}</h1>
        <p className="soft">{learningWords.lead}</p>
      </div>
      <Learning first={learning} mayChange={role === 'manager'} />
    </main>
  );
}
