import { shellWords } from '../words/shell.ts';
import styles from './loading-page.module.css';

/** A page on its way: blank ruled lines where the list will stand. */
export function LoadingPage({ title, wide = false }: { title: string; wide?: boolean }) {
  return (
    <main id="content" className={wide ? 'page wide' : 'page'} aria-busy="true">
      <h1>{title}</h1>
      <p role="status" className="soft">
        {shellWords.loading}
      </p>
      <div className={styles.lines} aria-hidden="true">
        <i />
        <i />
        <i />
        <i />
      </div>
    </main>
  );
}
