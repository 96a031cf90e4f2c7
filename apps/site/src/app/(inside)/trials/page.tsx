import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { Further } from '../../../paging/further.tsx';
import { pagePath } from '../../../paging/page-path.ts';
import { trialsWords } from '../../../words/trials.ts';
import { IncidenceLine } from './_components/incidence.tsx';
import { Matured } from './_components/matured.tsx';
import { Trials } from './_components/trials.tsx';

export const metadata = { title: trialsWords.title };

export default async function Page({ searchParams }: { searchParams: Promise<{ after?: string }> }) {
  const { after = null } = await searchParams;
  const pathOf = (from: string | null) => pagePath('/trials', { after: from });
  const path = pathOf(after);
  await requireRole(path, ['manager']);
  const query = after === null ? {} : { after };
  const page = await readPage(path, (api) => answerOf(api.GET('/api/trials', { params: { query } })));
  return (
    <main id="content" className="page wide">
      <div>
        <h1>{trialsWords.title}</h1>
        <p className="soft">{trialsWords.lead}</p>
      </div>
      <Trials key={path} first={page.items} />
      <Further words={trialsWords} after={after} next={page.next} pathOf={pathOf} />
      <IncidenceLine incidence={page.incidence} />
      <Matured matured={page.matured} />
    </main>
  );
}
