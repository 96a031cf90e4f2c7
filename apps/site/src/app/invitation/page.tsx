import { invitationWords } from '../../words/accounts.ts';
import { InvitationForm } from './_components/invitation-form.tsx';

export const metadata = { title: invitationWords.title, referrer: 'no-referrer' as const };

export default function Page() {
  return (
    <main id="content" className="page">
      <h1>{invitationWords.title}</h1>
      <InvitationForm />
    </main>
  );
}
