import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../../http/read-me.ts';
import { readPage } from '../../../../http/read-page.ts';
import { staffWords } from '../../../../words/staff.ts';
import { Staff } from './_components/staff.tsx';

export const metadata = { title: staffWords.title };

export default async function Page() {
  const me = await requireRole('/settings/staff', ['manager']);
  const staff = await readPage('/settings/staff', (api) => answerOf(api.GET('/api/staff')));
  return (
    <main id="content" className="page">
      <div>
        <h1>{staffWords.title}</h1>
        <p className="soft">{staffWords.lead}</p>
      </div>
      <Staff first={staff} own={me.membershipId} />
    </main>
  );
}
