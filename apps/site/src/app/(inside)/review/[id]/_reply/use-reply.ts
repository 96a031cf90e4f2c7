'use client';
import { AnsweredProblem, answerOf, ifMatch } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../../http/trouble.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { type Draft, emptyReply, type ReplyForm } from './reply-form.ts';

/** `leaving`: on its way for half a minute, and can be taken back. */
export type ReplyState = 'saved' | 'unsaved' | 'saving' | 'sending' | 'leaving' | 'sent';
const restMs = 1500;

const put = (id: string, version: number, body: ReplyForm) =>
  answerOf(
    api.PUT('/api/submissions/{id}/reply', {
      params: { path: { id }, header: { 'If-Match': ifMatch(version) } },
      body,
    }),
  );

/** The version a draft has now, after somebody else saved one: the own text is saved over it. */
const versionNow = async (id: string): Promise<number> => {
  const review = await answerOf(api.GET('/api/submissions/{id}/review', { params: { path: { id } } }));
  return review.reply?.version ?? 0;
};

const save = async (id: string, version: number, form: ReplyForm): Promise<Draft> => {
  try {
    return await put(id, version, form);
  } catch (error) {
    if (!(error instanceof AnsweredProblem) || error.code !== 'changed-meanwhile') throw error;
    return put(id, await versionNow(id), form);
  }
};

/** The draft of a reply: saved by itself while it is written, then sent once. */
export const useReply = (id: string, first: Draft | null) => {
  const [form, setForm] = useState<ReplyForm>(first ?? emptyReply);
  const [state, setState] = useState<ReplyState>(
    first?.status === 'sent' ? 'sent' : first?.status === 'sending' ? 'leaving' : 'saved',
  );
  const [leavesAt, setLeavesAt] = useState(first?.sendsAt ?? null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const own = useRef(form);
  const version = useRef(first?.version ?? 0);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const once = useOnceKey();

  const flush = useCallback(async () => {
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
    const write = async () => {
      const { words, cause, setUpTicks, frames, plan } = own.current;
      setState('saving');
      const draft = await save(id, version.current, { words, cause, setUpTicks, frames, plan });
      version.current = draft.version;
      setState(timer.current === null ? 'saved' : 'unsaved');
      setTrouble(null);
      return draft;
    };
    const written = line.current.then(write, write);
    line.current = written.catch(() => undefined);
    return written;
  }, [id]);

  const fail = useCallback((error: unknown) => {
    setState('unsaved');
    setTrouble(troubleOf(error));
  }, []);

  const change = useCallback(
    (next: (form: ReplyForm) => ReplyForm) => {
      own.current = next(own.current);
      setForm(own.current);
      setState('unsaved');
      if (timer.current !== null) clearTimeout(timer.current);
      timer.current = setTimeout(() => flush().catch(fail), restMs);
    },
    [flush, fail],
  );

  const send = useCallback(async (): Promise<Draft | null> => {
    try {
      const draft = await flush();
      setState('sending');
      const header = { 'Idempotency-Key': once.keyFor([id, draft.version]) };
      const sent = await answerOf(
        api.POST('/api/submissions/{id}/reply/send', { params: { path: { id }, header } }),
      );
      once.answered();
      version.current = sent.version;
      setLeavesAt(sent.sendsAt);
      setState('leaving');
      return sent;
    } catch (error) {
      fail(error);
      return null;
    }
  }, [flush, fail, id, once.keyFor, once.answered]);

  const undo = useCallback(async (): Promise<Draft | null> => {
    try {
      const draft = await answerOf(
        api.POST('/api/submissions/{id}/reply/undo', { params: { path: { id } } }),
      );
      version.current = draft.version;
      setTrouble(null);
      setState('saved');
      return draft;
    } catch (error) {
      setTrouble(troubleOf(error));
      return null;
    }
  }, [id]);

  useEffect(
    () => () => {
      if (timer.current !== null) clearTimeout(timer.current);
    },
    [],
  );
  const saveNow = useCallback(() => flush().catch(fail), [flush, fail]);
  const left = useCallback(() => setState('sent'), []);
  return { form, state, leavesAt, trouble, change, saveNow, send, undo, left };
};

export type Replying = ReturnType<typeof useReply>;
