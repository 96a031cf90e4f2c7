import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { lookWords } from '../../../words/look.ts';
import { Look } from './_components/look.tsx';

export const metadata = { title: lookWords.title };

export default async function Page() {
  await requireRole('/look', ['student']);
  const frame = await readPage('/look', async (api) => {
    const { replies } = await answerOf(api.GET('/api/home'));
    for (const { id } of replies) {
      const { frames } = await answerOf(api.GET('/api/replies/{id}', { params: { path: { id } } }));
      const [first] = frames;
      if (first !== undefined) return first;
    }
    return null;
  });
  return (
    <main id="content" className="page wide">
      <div className="stack tight">
        <h1>{lookWords.title}</h1>
        <p>{lookWords.lead}</p>
      </div>
      <Look coach={frame} />
    </main>
  );
}
