import { answerOf } from '@ballfirst/contracts/client';
import { redirect } from 'next/navigation';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { ownTrialWords } from '../../../words/asking.ts';
import { OwnTrial } from './_components/own-trial.tsx';

export const metadata = { title: ownTrialWords.title };

export default async function Page() {
  const { student } = await requireRole('/trial', ['student']);
  if (student === null) redirect('/');
  const trial = await readPage('/trial', (api) => answerOf(api.GET('/api/trial')));
  return (
    <main id="content" className="page">
      <OwnTrial first={trial} hand={student.hand} />
    </main>
  );
}
