import { guardianWords } from '../../../words/guardian.ts';
import { ConsentPage } from './_components/consent-page.tsx';

export const metadata = { title: guardianWords.title, referrer: 'no-referrer' as const };

export default async function Page({ params }: { params: Promise<{ academy: string }> }) {
  const { academy } = await params;
  return (
    <main id="content" className="page">
      <h1>{guardianWords.title}</h1>
      <ConsentPage academy={academy} />
    </main>
  );
}
