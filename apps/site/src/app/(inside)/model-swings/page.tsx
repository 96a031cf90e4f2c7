import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { collectionWords } from '../../../words/compare.ts';
import { Collection } from './_components/collection.tsx';

export const metadata = { title: collectionWords.title };

export default async function Page() {
  await requireRole('/model-swings', ['manager']);
  const { items } = await readPage('/model-swings', (api) => answerOf(api.GET('/api/model-swings')));
  return (
    <main id="content" className="page">
      <div>
        <h1>{collectionWords.title}</h1>
        <p className="soft">{collectionWords.lead}</p>
      </div>
      <Collection first={items} />
    </main>
  );
}
