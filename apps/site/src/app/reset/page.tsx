import { resetWords } from '../../words/accounts.ts';
import { ResetForm } from './_components/reset-form.tsx';

export const metadata = { title: resetWords.title, referrer: 'no-referrer' as const };

export default function Page() {
  return (
    <main id="content" className="page">
      <h1>{resetWords.title}</h1>
      <ResetForm />
    </main>
  );
}
