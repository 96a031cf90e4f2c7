import Link from 'next/link';
import { collectionWords } from '../../../../words/compare.ts';
import { learningWords } from '../../../../words/learning.ts';
import { settingsWords } from '../../../../words/settings.ts';
import styles from '../settings.module.css';

/** The parts of the settings, over each of them. */
export function SettingsParts() {
  return (
    <nav aria-label={settingsWords.parts} className={styles.parts}>
      <Link href="/settings">{settingsWords.reminders.title}</Link>
      <Link href="/settings/staff">{settingsWords.staff}</Link>
      <Link href="/learning">{learningWords.title}</Link>
      <Link href="/model-swings">{collectionWords.title}</Link>
    </nav>
  );
}
