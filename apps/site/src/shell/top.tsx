import Link from 'next/link';
import { isMember, type Me } from '../http/read-me.ts';
import { shellWords } from '../words/shell.ts';
import { Account } from './account.tsx';
import { Nav } from './nav.tsx';
import styles from './shell.module.css';

/** The head of every page: whose paper this is, where one can go, who is signed in. */
export function Top({ me }: { me: Me | null }) {
  const member = me !== null && isMember(me) ? me : null;
  return (
    <header className={`top ${styles.top}`}>
      <Link href="/" className={styles.house}>
        {member?.academy.name ?? shellWords.product}
      </Link>
      {member !== null && <Nav role={member.role} />}
      {me !== null && <Account name={me.name} several={me.academies.length > 1} />}
    </header>
  );
}
