import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { Further } from '../../../paging/further.tsx';
import { pagePath } from '../../../paging/page-path.ts';
import { mailWords } from '../../../words/mail.ts';
import { Letters } from './_components/letters.tsx';

export const metadata = { title: mailWords.title };

export default async function Page({ searchParams }: { searchParams: Promise<{ after?: string }> }) {
  const { after = null } = await searchParams;
  const pathOf = (from: string | null) => pagePath('/mail', { after: from });
  const path = pathOf(after);
  await requireRole(path, ['manager']);
  const query = after === null ? {} : { after };
  const page = await readPage(path, (api) => answerOf(api.GET('/api/mail', { params: { query } })));
  return (
    <main id="content" className="page">
      <div>
        <h1>{mailWords.title}</h1>
        <p className="soft">{mailWords.lead}</p>
      </div>
      <Letters letters={page.items} />
      <Further words={mailWords} after={after} next={page.next} pathOf={pathOf} />
    </main>
  );
}
