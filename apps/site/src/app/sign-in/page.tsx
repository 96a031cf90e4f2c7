import { redirect } from 'next/navigation';
import { ownPath } from '../../http/first-page.ts';
import { isMember, readMe } from '../../http/read-me.ts';
import { signInWords } from '../../words/sign-in.ts';
import { ChooseAcademy } from './_components/choose-academy.tsx';
import { SignInForm } from './_components/sign-in-form.tsx';

export const metadata = { title: signInWords.title };

type Search = Promise<{ next?: string; choose?: string }>;

export default async function Page({ searchParams }: { searchParams: Search }) {
  const { next, choose } = await searchParams;
  const path = ownPath(next);
  const me = await readMe();
  if (me !== null && isMember(me) && choose === undefined) redirect(path);
  return (
    <main id="content" className="page">
      {me === null ? (
        <SignInForm next={path} />
      ) : (
        <ChooseAcademy academies={me.academies} current={me.academy?.id ?? null} next={path} />
      )}
    </main>
  );
}
