'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { useKept } from '../../../../shell/use-kept.ts';
import { useKeys } from '../../../../shell/use-keys.ts';
import { useInstantWords } from '../../../../times/use-instant-words.ts';
import { useNow } from '../../../../times/use-now.ts';
import { inboxWords } from '../../../../words/inbox.ts';
import { leftInWords } from '../../../../words/times.ts';
import { type InboxFilter, pathOf } from '../search-params.ts';
import { Filters } from './filters.tsx';
import styles from './inbox.module.css';
import { Keys } from './keys.tsx';
import { LoadLine } from './load-line.tsx';
import { Preview } from './preview.tsx';
import { Row } from './row.tsx';
import { SearchBox } from './search-box.tsx';
import { UndoLine } from './undo-line.tsx';
import { type Item, pathOfItem, useInbox } from './use-inbox.ts';
import { useNextReady } from './use-next-ready.ts';
import { useRowActs } from './use-row-acts.ts';

const blockOrder = ['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later'] as const;
type Props = { first: Reply<'readInbox'>; filter: InboxFilter; membershipId: string };

export function Inbox({ first, filter, membershipId }: Props) {
  const { page, trouble, undo, live, claim, release, close, handOver, next } = useInbox(
    first,
    filter,
    membershipId,
  );
  const [currentId, setCurrentId] = useState(first.items[0]?.id ?? null);
  const [keysOn, setKeysOn] = useKept('ballfirst.keys', true);
  const [handing, setHanding] = useState(false);
  const [nothingNext, setNothingNext] = useState(false);
  const list = useRef<HTMLDivElement>(null);
  const search = useRef<HTMLInputElement>(null);
  const router = useRouter();
  const now = useNow();
  const when = useInstantWords();

  const { items } = page;
  const at = items.findIndex((item) => item.id === currentId);
  const current: Item | undefined = items[at] ?? items[0];
  const mine = (item: Item) => item.claim?.membershipId === membershipId;
  const leftMs = (item: Item) => Date.parse(item.answerBy) - now;
  useNextReady(items, current?.id ?? null);
  const acts = useRowActs({
    onCurrent: ({ id }) => setCurrentId(id),
    onClaim: claim,
    onRelease: release,
    onClose: close,
  });

  const takeNext = async () => {
    const taken = await next(filter.fault);
    setNothingNext(taken === null);
    if (taken === null) return;
    const row = items.find(({ id }) => id === taken.id);
    if (taken.kind === 'swing') router.push(`/review/${taken.id}`);
    else if (row !== undefined) router.push(pathOfItem(row));
  };
  const go = (step: number) => {
    setHanding(false);
    const to = items[Math.min(items.length - 1, Math.max(0, Math.max(0, at) + step))];
    if (to === undefined) return true;
    setCurrentId(to.id);
    list.current?.querySelector<HTMLElement>(`[data-id="${to.id}"] a`)?.focus();
    return true;
  };

  useKeys((event) => {
    if (event.altKey) return false;
    if (event.key === 'j') return go(1);
    if (event.key === 'k') return go(-1);
    if (event.key === '/') {
      search.current?.focus();
      return true;
    }
    if (event.key === 'n') {
      void takeNext();
      return true;
    }
    if (current === undefined) return false;
    if (event.key === 'c' && current.claim === null) void claim(current);
    else if (event.key === 'u' && mine(current)) void release(current);
    else if (event.key === 'h' && mine(current) && current.kind === 'swing') setHanding(true);
    else if (event.key === 'Enter' && event.target === document.body) router.push(pathOfItem(current));
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
        <div className="row">
          <button type="button" className="main" onClick={takeNext}>
            {inboxWords.next}
          </button>
          <Keys on={keysOn} setOn={setKeysOn} />
        </div>
      </div>
      <div className="row apart">
        <SearchBox filter={filter} input={search} />
        <span className="small soft">{inboxWords.live[live]}</span>
      </div>
      <Filters filter={filter} />
      <LoadLine rows={items.length} />
      <p role="status" className={nothingNext ? 'notice' : 'unseen'}>
        {nothingNext && inboxWords.nothingNext}
      </p>
      <UndoLine undo={undo} />
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
                      left={leftInWords(leftMs(item))}
                      late={leftMs(item) < 0}
                      when={when}
                      acts={acts}
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
        {current !== undefined && (
          <Preview
            item={current}
            mine={mine(current)}
            handing={handing}
            setHanding={setHanding}
            onClose={(outcome) => close(current, outcome)}
            onHandOver={(to, why) => handOver(current, to, why)}
          />
        )}
      </div>
    </>
  );
}
