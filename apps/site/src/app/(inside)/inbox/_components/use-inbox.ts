'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../http/trouble.ts';
import { type InboxFilter, queryOf } from '../search-params.ts';

export type Item = Reply<'readInbox'>['items'][number];
type Page = Reply<'readInbox'>;

const renewEveryMs = 15_000;

/** The page of the inbox as it stands now: renewed while it is looked at, claims shown before they are answered. */
export const useInbox = (first: Page, filter: InboxFilter, membershipId: string) => {
  const [page, setPage] = useState(first);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const writing = useRef(0);

  const renew = useCallback(async () => {
    if (document.hidden || writing.current > 0) return;
    try {
      const next = await answerOf(api.GET('/api/inbox', { params: { query: queryOf(filter) } }));
      if (writing.current === 0) setPage(next);
    } catch {
      // The next turn asks again; what is shown stays.
    }
  }, [filter]);

  useEffect(() => {
    const timer = setInterval(renew, renewEveryMs);
    return () => clearInterval(timer);
  }, [renew]);

  const setClaim = (id: string, claim: Item['claim']) =>
    setPage((now) => ({
      ...now,
      items: now.items.map((item) => (item.id === id ? { ...item, claim } : item)),
    }));

  const write = async (item: Item, shown: Item['claim'], ask: () => Promise<Reply<'readSubmission'>>) => {
    setTrouble(null);
    setClaim(item.id, shown);
    writing.current += 1;
    try {
      setClaim(item.id, (await ask()).claim);
    } catch (error) {
      setClaim(item.id, item.claim);
      setTrouble(troubleOf(error));
    } finally {
      writing.current -= 1;
    }
    void renew();
  };

  const claim = (item: Item) =>
    write(item, { membershipId, name: '', expiresAt: new Date().toISOString() }, () =>
      answerOf(api.POST('/api/submissions/{id}/claim', { params: { path: { id: item.id } } })),
    );
  const release = (item: Item) =>
    write(item, null, () =>
      answerOf(api.POST('/api/submissions/{id}/release', { params: { path: { id: item.id } } })),
    );
  return { page, trouble, claim, release };
};
