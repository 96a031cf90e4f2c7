import { answerOf } from '@ballfirst/contracts/client';
import { readPage } from '../../../http/read-page.ts';
import { joinWords } from '../../../words/sign-in.ts';
import { JoinForm } from './_components/join-form.tsx';

type Props = { params: Promise<{ academy: string }> };

const read = (academy: string) =>
  readPage(`/join/${academy}`, (api) =>
    answerOf(api.GET('/api/academies/{academy}', { params: { path: { academy } } })),
  );

export const metadata = { title: joinWords.go };

export default async function Page({ params }: Props) {
  const academy = await read((await params).academy);
  return (
    <main id="content" className="page">
      <div className="stack tight">
        <h1>{joinWords.title(academy.name)}</h1>
        <p>{joinWords.lead}</p>
        <p>{joinWords.trial(academy.trialDays, academy.trialStarts)}</p>
        <p>
          {joinWords.price}: {academy.priceWords}
        </p>
        <p>{joinWords.promise(academy.promiseHours)}</p>
      </div>
      <JoinForm academy={academy} />
    </main>
  );
}
