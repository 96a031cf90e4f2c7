'use client';
import Link, { useLinkStatus } from 'next/link';
import { usePathname } from 'next/navigation';
import type { Role } from '../http/read-me.ts';
import { shellWords } from '../words/shell.ts';
import styles from './shell.module.css';

const pages: Record<Role, readonly (readonly [path: string, name: string])[]> = {
  student: [
    ['/home', shellWords.nav.home],
    ['/send', shellWords.nav.send],
    ['/look', shellWords.nav.look],
  ],
  coach: [
    ['/inbox', shellWords.nav.inbox],
    ['/students', shellWords.nav.students],
    ['/faults', shellWords.nav.faults],
  ],
  manager: [
    ['/trials', shellWords.nav.trials],
    ['/inbox', shellWords.nav.inbox],
    ['/students', shellWords.nav.students],
    ['/faults', shellWords.nav.faults],
    ['/coaches', shellWords.nav.coaches],
    ['/mail', shellWords.nav.mail],
    ['/settings', shellWords.nav.settings],
  ],
};

function Pending() {
  const { pending } = useLinkStatus();
  return <span aria-hidden="true" className={pending ? styles.pending : styles.settled} />;
}

export function Nav({ role }: { role: Role }) {
  const here = usePathname();
  return (
    <nav aria-label={shellWords.mainNavigation} className={styles.nav}>
      {pages[role].map(([path, name]) => (
        <Link
          key={path}
          href={path}
          className={styles.navLink}
          {...((here === path || here.startsWith(`${path}/`)) && { 'aria-current': 'page' as const })}
        >
          {name}
          <Pending />
        </Link>
      ))}
    </nav>
  );
}
