import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { inboxWords } from '../../../words/inbox.ts';
import { Inbox } from './_components/inbox.tsx';
import { filterOf, type InboxSearch, pathOf, queryOf } from './search-params.ts';

export const metadata = { title: inboxWords.title };

export default async function Page({ searchParams }: { searchParams: Promise<InboxSearch> }) {
  const filter = filterOf(await searchParams);
  const path = pathOf(filter);
  const me = await requireRole(path, ['coach', 'manager']);
  const page = await readPage(path, (api) =>
    answerOf(api.GET('/api/inbox', { params: { query: queryOf(filter) } })),
  );
  return (
    <main id="content" className="page wide">
      <Inbox key={path} first={page} filter={filter} membershipId={me.membershipId} />
    </main>
  );
}
