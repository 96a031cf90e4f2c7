import Link from 'next/link';
import { redirect } from 'next/navigation';
import { firstPage } from '../http/first-page.ts';
import { isMember, readMe } from '../http/read-me.ts';
import { welcomeWords } from '../words/shell.ts';
import { ThreeSteps } from './_components/three-steps.tsx';

export default async function Page() {
  const me = await readMe();
  if (me !== null) redirect(isMember(me) ? firstPage[me.role] : '/sign-in?choose=1');
  return (
    <main id="content" className="page">
      <div className="stack">
        <h1>{welcomeWords.title}</h1>
        <p className="measure">{welcomeWords.lead}</p>
        <p>
          <Link href="/sign-in" className="button main">
            {welcomeWords.signIn}
          </Link>
        </p>
        <p className="hint">{welcomeWords.joinHint}</p>
      </div>
      <ThreeSteps />
      <p className="hint">{welcomeWords.safety}</p>
    </main>
  );
}
