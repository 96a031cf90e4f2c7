'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { useKept } from '../../../../shell/use-kept.ts';
import { useKeys } from '../../../../shell/use-keys.ts';
import { inboxWords } from '../../../../words/inbox.ts';
import { type InboxFilter, pathOf } from '../search-params.ts';
import { Filters } from './filters.tsx';
import styles from './inbox.module.css';
import { Keys } from './keys.tsx';
import { Preview } from './preview.tsx';
import { Row } from './row.tsx';
import { type Item, useInbox } from './use-inbox.ts';

const blockOrder = ['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later'] as const;
type Props = { first: Reply<'readInbox'>; filter: InboxFilter; membershipId: string };

export function Inbox({ first, filter, membershipId }: Props) {
  const { page, trouble, claim, release } = useInbox(first, filter, membershipId);
  const [currentId, setCurrentId] = useState(first.items[0]?.id ?? null);
  const [sheet, setSheet] = useState(false);
  const [keysOn, setKeysOn] = useKept('ballfirst.keys', true);
  const list = useRef<HTMLDivElement>(null);
  const router = useRouter();

  const { items } = page;
  const at = items.findIndex((item) => item.id === currentId);
  const current: Item | undefined = items[at] ?? items[0];
  const mine = (item: Item) => item.claim?.membershipId === membershipId;

  const go = (step: number) => {
    const next = items[Math.min(items.length - 1, Math.max(0, Math.max(0, at) + step))];
    if (next === undefined) return true;
    setCurrentId(next.id);
    list.current?.querySelector<HTMLElement>(`[data-id="${next.id}"] a`)?.focus();
    return true;
  };

  useKeys((event) => {
    if (event.altKey) return false;
    if (event.key === 'j') return go(1);
    if (event.key === 'k') return go(-1);
    if (event.key === '?') {
      setSheet((open) => !open);
      return true;
    }
    if (current === undefined) return false;
    if (event.key === 'c' && current.claim === null) void claim(current);
    else if (event.key === 'u' && mine(current)) void release(current);
    else if (event.key === 'Enter' && event.target === document.body) router.push(`/review/${current.id}`);
    else return false;
    return true;
  }, keysOn);

  return (
    <>
      <div className="row apart">
        <div>
          <h1>{inboxWords.title}</h1>
          <p className="soft">{inboxWords.lead}</p>
        </div>
        <Keys open={sheet} setOpen={setSheet} on={keysOn} setOn={setKeysOn} />
      </div>
      <Filters filter={filter} />
      <TroubleNote trouble={trouble} />
      <div className={styles.split}>
        <div ref={list} className={styles.list}>
          {items.length === 0 && (
            <div className="stack tight">
              <h2>{inboxWords.emptyTitle}</h2>
              <p>{pathOf(filter) === '/inbox' ? inboxWords.empty : inboxWords.emptyFiltered}</p>
              {pathOf(filter) !== '/inbox' && <Link href="/inbox">{inboxWords.clearFilters}</Link>}
            </div>
          )}
          {blockOrder.map((block) => {
            const rows = items.filter((item) => item.block === block);
            if (rows.length === 0) return null;
            return (
              <section key={block} className={styles.block} aria-labelledby={`block-${block}`}>
                <h2 id={`block-${block}`} className={block === 'pain' ? styles.painTitle : styles.blockTitle}>
                  {inboxWords.blocks[block]} <span className="soft">{rows.length}</span>
                </h2>
                <ul className={styles.rows}>
                  {rows.map((item) => (
                    <Row
                      key={item.id}
                      item={item}
                      mine={mine(item)}
                      current={item.id === current?.id}
                      onCurrent={() => setCurrentId(item.id)}
                      onClaim={() => claim(item)}
                      onRelease={() => release(item)}
                    />
                  ))}
                </ul>
              </section>
            );
          })}
          <nav className="row" aria-label={inboxWords.further}>
            {filter.after !== null && <Link href={pathOf({ ...filter, after: null })}>{inboxWords.top}</Link>}
            {page.next !== null && (
              <Link href={pathOf({ ...filter, after: page.next })}>{inboxWords.further}</Link>
            )}
          </nav>
        </div>
        {current !== undefined && <Preview item={current} />}
      </div>
    </>
  );
}
