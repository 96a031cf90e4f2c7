import { forgottenWords } from '../../words/accounts.ts';
import { ForgottenForm } from './_components/forgotten-form.tsx';

export const metadata = { title: forgottenWords.title };

export default function Page() {
  return (
    <main id="content" className="page">
      <ForgottenForm />
    </main>
  );
}
