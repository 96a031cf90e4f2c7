import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { faultsWords } from '../../../words/faults.ts';
import { Faults } from './_components/faults.tsx';

export const metadata = { title: faultsWords.title };

export default async function Page() {
  await requireRole('/faults', ['coach', 'manager']);
  const [lately, clips] = await readPage('/faults', (api) =>
    Promise.all([answerOf(api.GET('/api/faults')), answerOf(api.GET('/api/library/teaching-clips'))]),
  );
  return (
    <main id="content" className="page wide">
      <div>
        <h1>{faultsWords.title}</h1>
        <p className="soft measure">{faultsWords.lead}</p>
      </div>
      <Faults lately={lately} first={clips.items} />
    </main>
  );
}
