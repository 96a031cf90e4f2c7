'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useRef, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../http/trouble.ts';
import { useOnceKey } from '../../../../http/use-once-key.ts';
import { type InboxFilter, queryOf } from '../search-params.ts';
import { keepUnchanged } from './keep-unchanged.ts';
import { useLive } from './use-live.ts';

export type Item = Reply<'readInbox'>['items'][number];
export type Close = 'spoke' | 'wrote' | 'no-need';
type Page = Reply<'readInbox'>;
type Claim = Item['claim'];
/** The last claim or release, and the way back from it. */
export type Undo = {
  readonly done: 'claimed' | 'released';
  readonly name: string;
  readonly back: () => void;
};

const claimOf = (claim: { membershipId: string; name: string; expiresAt: string } | null): Claim =>
  claim === null ? null : { handed: null, ...claim };

/** The page of the inbox as it stands now: claims are shown before they are answered, and put back when refused. */
export const useInbox = (first: Page, filter: InboxFilter, membershipId: string) => {
  const [page, setPage] = useState(first);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [undo, setUndo] = useState<Undo | null>(null);
  const [away, setAway] = useState(false);
  const writing = useRef(0);
  const once = useOnceKey();

  const renew = useCallback(async () => {
    if (document.hidden || writing.current > 0) return;
    try {
      const next = await answerOf(api.GET('/api/inbox', { params: { query: queryOf(filter) } }));
      setAway(false);
      if (writing.current === 0)
        setPage((shown) => ({ ...next, items: keepUnchanged(shown.items, next.items) }));
    } catch (error) {
      // What is shown stays; the next turn asks again, but not for somebody who is signed out.
      const found = troubleOf(error);
      setAway(found.code === null);
      if (found.code === 'not-signed-in') setTrouble(found);
    }
  }, [filter]);
  const live = useLive(renew);

  const change = (id: string, to: (item: Item) => Item | null) =>
    setPage((now) => ({
      ...now,
      items: now.items.flatMap((item) => (item.id === id ? (to(item) ?? []) : item)),
    }));

  const write = async (item: Item, shown: (item: Item) => Item | null, ask: () => Promise<Claim>) => {
    setTrouble(null);
    setUndo(null);
    const before = page;
    change(item.id, shown);
    writing.current += 1;
    try {
      const claim = await ask();
      change(item.id, (now) => ({ ...now, claim }));
      return true;
    } catch (error) {
      setPage(before);
      setTrouble(troubleOf(error));
      return false;
    } finally {
      writing.current -= 1;
      void renew();
    }
  };

  const claim = async (item: Item) => {
    const params = { path: { id: item.id } };
    const mine = { membershipId, name: '', expiresAt: new Date().toISOString(), handed: null };
    const done = await write(
      item,
      (now) => ({ ...now, claim: mine }),
      async () => {
        const answer =
          item.kind === 'swing'
            ? await answerOf(api.POST('/api/submissions/{id}/claim', { params }))
            : await answerOf(api.POST('/api/concerns/{id}/claim', { params }));
        return claimOf(answer.claim);
      },
    );
    if (done) setUndo({ done: 'claimed', name: item.student.name, back: () => void release(item) });
  };
  const release = async (item: Item) => {
    const params = { path: { id: item.id } };
    const done = await write(
      item,
      (now) => ({ ...now, claim: null }),
      async () => {
        const answer =
          item.kind === 'swing'
            ? await answerOf(api.POST('/api/submissions/{id}/release', { params }))
            : await answerOf(api.POST('/api/concerns/{id}/release', { params }));
        return claimOf(answer.claim);
      },
    );
    if (done) setUndo({ done: 'released', name: item.student.name, back: () => void claim(item) });
  };
  const close = (item: Item, outcome: Close) =>
    write(
      item,
      () => null,
      async () => {
        const params = { path: { id: item.id } };
        const { claim } = await answerOf(api.POST('/api/concerns/{id}/close', { params, body: { outcome } }));
        return claimOf(claim);
      },
    );
  const handOver = (item: Item, to: string, why: string) =>
    write(
      item,
      (now) => now,
      async () => {
        const params = { path: { id: item.id } };
        const answer = await answerOf(
          api.POST('/api/submissions/{id}/hand-over', { params, body: { to, why } }),
        );
        return claimOf(answer.claim);
      },
    );
  /** The first row that nobody has, taken; null when there is none. */
  const next = async (fault: InboxFilter['fault']): Promise<Reply<'claimNext'>['taken']> => {
    setTrouble(null);
    try {
      const body = { fault };
      const header = { 'Idempotency-Key': once.keyFor(body) };
      const { taken } = await answerOf(api.POST('/api/inbox/next', { params: { header }, body }));
      once.answered();
      return taken;
    } catch (error) {
      setTrouble(troubleOf(error));
      return null;
    }
  };
  return { page, trouble, undo, live: away ? 'away' : live, claim, release, close, handOver, next } as const;
};

/** Where a row is worked on. */
export const pathOfItem = (item: Pick<Item, 'kind' | 'id' | 'student'> & { replyId?: string }): string => {
  if (item.kind === 'swing') return `/review/${item.id}`;
  return item.replyId === undefined ? `/students/${item.student.id}` : `/replies/${item.replyId}#thread`;
};
