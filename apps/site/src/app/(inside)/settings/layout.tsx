import Link from 'next/link';
import type { ReactNode } from 'react';
import { requireRole } from '../../../http/read-me.ts';
import { collectionWords } from '../../../words/compare.ts';
import { settingsWords } from '../../../words/settings.ts';
import styles from './settings.module.css';

/** Asked before anything is shown, so that a stranger is sent to the sign-in and not to a page on its way. */
export default async function Layout({ children }: { children: ReactNode }) {
  await requireRole('/settings', ['manager']);
  return (
    <>
      <nav aria-label={settingsWords.parts} className={styles.parts}>
        <Link href="/settings">{settingsWords.reminders.title}</Link>
        <Link href="/settings/staff">{settingsWords.staff}</Link>
        <Link href="/model-swings">{collectionWords.title}</Link>
      </nav>
      {children}
    </>
  );
}
