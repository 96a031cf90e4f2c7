import Link from 'next/link';
import { memo } from 'react';
import { inboxWords, kindOrder } from '../../../../words/inbox.ts';
import { outcomeNames } from '../../../../words/names.ts';
import { outcomeOrder } from '../../../../words/tally.ts';
import { type InboxFilter, pathOf } from '../search-params.ts';
import styles from './inbox.module.css';

const claims = [
  [null, inboxWords.everything],
  ['nobody', inboxWords.unclaimed],
  ['me', inboxWords.mine],
] as const;
const kinds = [null, ...kindOrder] as const;
const faults = [null, ...outcomeOrder.filter((one) => one !== 'solid')] as const;

/** What to show, as links: a filter is an address that can be kept and passed on. */
export const Filters = memo(function Filters({ filter }: { filter: InboxFilter }) {
  const link = (key: string, to: Partial<InboxFilter>, on: boolean, words: string) => (
    <Link
      key={key}
      href={pathOf({ ...filter, after: null, ...to })}
      prefetch={false}
      className={styles.filter}
      {...(on && { 'aria-current': 'true' as const })}
    >
      {words}
    </Link>
  );
  return (
    <nav aria-label={inboxWords.filters} className={styles.filters}>
      <span className={styles.filterGroup}>
        {claims.map(([claimed, words]) => link(words, { claimed }, filter.claimed === claimed, words))}
      </span>
      <span className={styles.filterGroup}>
        {kinds.map((kind) => {
          const words = kind === null ? inboxWords.allKinds : inboxWords.kindFilters[kind];
          return link(words, { kind }, filter.kind === kind, words);
        })}
      </span>
      <span className={styles.filterGroup}>
        {faults.map((fault) => {
          const words = fault === null ? inboxWords.allFaults : outcomeNames[fault];
          return link(words, { fault }, filter.fault === fault, words);
        })}
      </span>
    </nav>
  );
});
