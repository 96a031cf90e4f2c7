'use client';
import { useRouter } from 'next/navigation';
import type { FormEvent, RefObject } from 'react';
import { inboxWords } from '../../../../words/inbox.ts';
import { type InboxFilter, pathOf } from '../search-params.ts';
import styles from './inbox.module.css';

type Props = { filter: InboxFilter; input: RefObject<HTMLInputElement | null> };

/** Looks for a student by a part of the name; like every filter it is kept in the address. */
export function SearchBox({ filter, input }: Props) {
  const router = useRouter();
  const look = (event: FormEvent) => {
    event.preventDefault();
    const search = input.current?.value.trim() ?? '';
    router.push(pathOf({ ...filter, after: null, search: search === '' ? null : search }));
  };
  return (
    <search>
      <form onSubmit={look} className={styles.search}>
        <label className="unseen" htmlFor="inbox-search">
          {inboxWords.search}
        </label>
        <input
          ref={input}
          id="inbox-search"
          type="search"
          maxLength={80}
          placeholder={inboxWords.search}
          defaultValue={filter.search ?? ''}
        />
        <button type="submit" className="small-button">
          {inboxWords.searchGo}
        </button>
      </form>
    </search>
  );
}
