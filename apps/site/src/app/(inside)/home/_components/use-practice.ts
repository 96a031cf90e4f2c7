'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useState } from 'react';
import type { Programme } from '../../../../drill-card/rung-states.ts';
import { api } from '../../../../http/browser-api.ts';
import { newKey } from '../../../../http/new-key.ts';
import { useSending } from '../../../../http/use-sending.ts';
import {
  freshPractice,
  keptPractice,
  type PracticeDraft,
  type Practised,
  practiceBody,
} from './practice-draft.ts';

type Logged = Reply<'logPractice'>;

const keep = (key: string, draft: PracticeDraft | null): void => {
  try {
    if (draft === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(draft));
  } catch {
    // A browser without room keeps the form only as long as the page is open.
  }
};

/** Logging practice, also where there is no signal: what was tapped is kept and logged once the signal is back. */
export const usePractice = (
  programme: Programme,
  practised: Practised,
  onLogged: (logged: Logged) => Promise<void>,
) => {
  const { id: drillId } = practised.drill;
  const second = drillId === programme.drill.id ? null : drillId;
  // Each drill keeps its own; the first is kept under the name it always had.
  const key = `ballfirst.practice.${programme.id}${second === null ? '' : `.${second}`}`;
  const [draft, setDraft] = useState(() => freshPractice(practised));
  const [logged, setLogged] = useState<Logged | null>(null);
  const { busy, trouble, run } = useSending();
  const waits = trouble !== null && trouble.code === null;

  // What the device kept is taken up when the page opens; a renewed programme must not undo what is being tapped.
  const [opened] = useState(practised);
  useEffect(() => setDraft(keptPractice(localStorage.getItem(key), opened)), [key, opened]);

  const change = useCallback(
    (next: (draft: PracticeDraft) => PracticeDraft) =>
      setDraft((now) => {
        const changed = next(now);
        keep(key, changed);
        return changed;
      }),
    [key],
  );

  const log = async () => {
    const body = practiceBody(draft, second);
    if (body === null) return;
    const text = JSON.stringify(body);
    const once = draft.once?.body === text ? draft.once : { key: newKey(), body: text };
    change((now) => ({ ...now, once }));
    const params = { path: { id: programme.id }, header: { 'Idempotency-Key': once.key } };
    const done = await run(() => answerOf(api.POST('/api/programmes/{id}/practice', { params, body })));
    if (done === null) return;
    keep(key, null);
    setLogged(done.answer);
    const { programme: now } = done.answer;
    setDraft(freshPractice(now.second?.drill.id === second ? now.second : now));
    await onLogged(done.answer);
  };

  useEffect(() => {
    if (!waits) return;
    const again = () => void log();
    window.addEventListener('online', again, { once: true });
    return () => window.removeEventListener('online', again);
  });

  return { draft, change, log, logged, again: () => setLogged(null), busy, trouble, waits };
};
