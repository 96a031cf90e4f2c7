import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { coachesWords } from '../../../words/coaches.ts';
import { Turnaround } from './_components/turnaround.tsx';
import { WaitingNow } from './_components/waiting-now.tsx';

export const metadata = { title: coachesWords.title };

export default async function Page() {
  await requireRole('/coaches', ['manager']);
  const coaches = await readPage('/coaches', (api) => answerOf(api.GET('/api/coaches/turnaround')));
  return (
    <main id="content" className="page wide">
      <div>
        <h1>{coachesWords.title}</h1>
        <p className="soft">{coachesWords.lead(coaches.days)}</p>
      </div>
      <WaitingNow coaches={coaches} />
      <Turnaround coaches={coaches} />
    </main>
  );
}
