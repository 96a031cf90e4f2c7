'use client';
import { AnsweredProblem, answerOf, ifMatch } from '@ballfirst/contracts/client';
import { ProblemError } from '@ballfirst/contracts/problems';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../../http/trouble.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { reviewWords } from '../../../../../words/review.ts';
import { dropDraft, keepDraft, readDraft } from '../_marking/kept-draft.ts';
import { type Draft, emptyReply, type ReplyForm } from './reply-form.ts';
import { formOf, sameForm } from './same-form.ts';

/** `leaving`: on its way for half a minute, and can be taken back. */
export type ReplyState = 'saved' | 'unsaved' | 'saving' | 'sending' | 'leaving' | 'sent';
const restMs = 800;

type Kept = { version: number; form: ReplyForm };
const isKept = (found: unknown): found is Kept =>
  typeof found === 'object' && found !== null && 'version' in found && 'form' in found;

const put = (id: string, version: number, body: ReplyForm) =>
  answerOf(
    api.PUT('/api/submissions/{id}/reply', {
      params: { path: { id }, header: { 'If-Match': ifMatch(version) } },
      body,
    }),
  );

/** What somebody else saved meanwhile. */
const storedNow = async (id: string): Promise<Draft | null> => {
  const review = await answerOf(api.GET('/api/submissions/{id}/review', { params: { path: { id } } }));
  return review.reply;
};

type Given = { id: string; membershipId: string; first: Draft | null; canWork: boolean };

/**
 * The draft of a reply: kept on this device and saved by itself while it is written, then sent once. Where somebody else
 * saved another text meanwhile nothing is saved until the coach has chosen.
 */
export const useReply = ({ id, membershipId, first, canWork }: Given) => {
  const key = `reply.${membershipId}.${id}`;
  const [form, setForm] = useState<ReplyForm>(first === null ? emptyReply : formOf(first));
  const [state, setState] = useState<ReplyState>(
    first?.status === 'sent' ? 'sent' : first?.status === 'sending' ? 'leaving' : 'saved',
  );
  const [replyId, setReplyId] = useState(first?.id ?? null);
  const [leavesAt, setLeavesAt] = useState(first?.sendsAt ?? null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [theirs, setTheirs] = useState<Draft | null>(null);
  const own = useRef(form);
  const version = useRef(first?.version ?? 0);
  const clash = useRef(false);
  const mayWork = useRef(canWork);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const once = useOnceKey();

  const meet = useCallback((stored: Draft | null) => {
    version.current = stored?.version ?? 0;
    clash.current = stored !== null && !sameForm(stored, own.current);
    setTheirs(clash.current ? stored : null);
    return clash.current;
  }, []);

  const flush = useCallback(async () => {
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = null;
    const write = async (): Promise<Draft> => {
      if (clash.current) throw new ProblemError('changed-meanwhile', reviewWords.chooseText);
      const sent = formOf(own.current);
      setState('saving');
      try {
        const draft = await put(id, version.current, sent);
        version.current = draft.version;
        if (sameForm(sent, own.current)) dropDraft(key);
        setState(timer.current === null ? 'saved' : 'unsaved');
        setTrouble(null);
        return draft;
      } catch (error) {
        if (!(error instanceof AnsweredProblem) || error.code !== 'changed-meanwhile') throw error;
        const stored = await storedNow(id);
        if (meet(stored) || stored === null)
          throw new ProblemError('changed-meanwhile', reviewWords.chooseText);
        dropDraft(key);
        setState('saved');
        return stored;
      }
    };
    const written = line.current.then(write, write);
    line.current = written.catch(() => undefined);
    return written;
  }, [id, key, meet]);

  const fail = useCallback((error: unknown) => {
    setState('unsaved');
    if (error instanceof ProblemError && error.code === 'changed-meanwhile') return setTrouble(null);
    setTrouble(troubleOf(error));
  }, []);

  const change = useCallback(
    (next: (form: ReplyForm) => ReplyForm) => {
      own.current = next(own.current);
      setForm(own.current);
      setState('unsaved');
      keepDraft(key, { version: version.current, form: formOf(own.current) });
      if (timer.current !== null) clearTimeout(timer.current);
      timer.current = setTimeout(() => mayWork.current && flush().catch(fail), restMs);
    },
    [flush, fail, key],
  );

  // What a crash left behind on this device: saved over its own version, beside any other.
  useEffect(() => {
    const kept = readDraft(key, isKept);
    const over = first?.status === 'sent' || first?.status === 'sending';
    if (kept === null || over || sameForm(kept.form, first ?? emptyReply)) return dropDraft(key);
    own.current = formOf(kept.form);
    setForm(own.current);
    setState('unsaved');
    if (kept.version !== (first?.version ?? 0)) meet(first);
    else if (mayWork.current) flush().catch(fail);
  }, [key, first, meet, flush, fail]);
  useEffect(() => {
    const began = canWork && !mayWork.current;
    mayWork.current = canWork;
    if (began && readDraft(key, isKept) !== null) flush().catch(fail);
  }, [canWork, key, flush, fail]);

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
      setReplyId(sent.id);
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

  /** Ends a clash: this text is saved over the other one, which was seen. */
  const settle = useCallback(
    (chosen: ReplyForm) => {
      clash.current = false;
      setTheirs(null);
      change(() => formOf(chosen));
      flush().catch(fail);
    },
    [change, flush, fail],
  );

  useEffect(
    () => () => {
      if (timer.current !== null) clearTimeout(timer.current);
    },
    [],
  );
  const saveNow = useCallback(() => flush().catch(fail), [flush, fail]);
  const left = useCallback(() => setState('sent'), []);
  return { form, state, replyId, leavesAt, trouble, theirs, change, saveNow, send, undo, left, settle };
};

export type Replying = ReturnType<typeof useReply>;
