import { stopWords } from '../../words/settings.ts';
import { StopForm } from './_components/stop-form.tsx';

export const metadata = { title: stopWords.title, referrer: 'no-referrer' as const };

export default function Page() {
  return (
    <main id="content" className="page">
      <h1>{stopWords.title}</h1>
      <StopForm />
    </main>
  );
}
