'use client';
import type { Place } from '@ballfirst/swing/marks/place';
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Trouble, troubleOf } from '../../../../../http/trouble.ts';
import { goBack, goOn, type History, noHistory, remember } from './history.ts';
import { dropDraft, keepDraft, readDraft } from './kept-draft.ts';
import {
  type Content,
  dropMark,
  type Mark,
  type Marking,
  type Observation,
  putMark,
  putObservation,
  putTrail,
  type TrailPoint,
} from './marking.ts';
import { type Conflict, mergeThree, sameContent, withItem } from './merge-three.ts';
import { saveMarking } from './save-marking.ts';

export type SaveState = 'saved' | 'unsaved' | 'saving';
type Kept = { base: Content; own: Content };

const restMs = 250;

const isKept = (found: unknown): found is Kept =>
  typeof found === 'object' && found !== null && 'base' in found && 'own' in found;

type Given = { submissionId: string; membershipId: string; stored: Marking; canWork: boolean };

/**
 * The marks and observations of one clip: changed at once, kept on this device until stored, stored one request after
 * another, undone and redone. What somebody else stored meanwhile is joined; where both changed one thing the coach chooses.
 */
export const useMarking = ({ submissionId, membershipId, stored, canWork }: Given) => {
  const { clipId } = stored;
  const key = `marks.${membershipId}.${clipId}`;
  const [content, setContent] = useState<Content>(stored);
  const [state, setState] = useState<SaveState>('saved');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [note, setNote] = useState<'merged' | 'restored' | null>(null);
  const [conflicts, setConflicts] = useState<readonly Conflict[]>([]);
  const [history, setHistory] = useState<History<Content>>(noHistory);
  const own = useRef<Content>(stored);
  const base = useRef<Marking>(stored);
  const open = useRef<readonly Conflict[]>([]);
  const steps = useRef<History<Content>>(noHistory);
  const mayWork = useRef(canWork);
  const atWork = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);

  const show = useCallback(
    (next: Content, past: History<Content>) => {
      own.current = next;
      steps.current = past;
      setContent(next);
      setHistory(past);
      if (sameContent(next, base.current)) dropDraft(key);
      else keepDraft(key, { base: base.current, own: next });
    },
    [key],
  );
  /** Lays own changes since `from` over what is stored now. */
  const join = useCallback(
    (from: Content, now: Marking) => {
      const merged = mergeThree(from, own.current, now);
      base.current = now;
      open.current = merged.conflicts;
      setConflicts(merged.conflicts);
      show(merged.content, merged.others ? noHistory : steps.current);
      return merged;
    },
    [show],
  );

  const save = useCallback(async (): Promise<void> => {
    if (atWork.current || open.current.length > 0 || !mayWork.current) return;
    atWork.current = true;
    setState('saving');
    try {
      while (open.current.length === 0 && !sameContent(own.current, base.current)) {
        const sent = own.current;
        const from = base.current;
        const saved = await saveMarking({ id: submissionId, clipId }, from.version, sent);
        const merged = join(saved.kind === 'saved' ? sent : from, saved.stored);
        if (merged.others) setNote('merged');
      }
      setTrouble(null);
      setState(open.current.length > 0 ? 'unsaved' : 'saved');
    } catch (error) {
      setState('unsaved');
      setTrouble(troubleOf(error));
    } finally {
      atWork.current = false;
    }
  }, [submissionId, clipId, join]);

  const saveSoon = useCallback(() => {
    setState((now) => (now === 'saving' ? now : 'unsaved'));
    if (timer.current !== null) clearTimeout(timer.current);
    timer.current = setTimeout(save, restMs);
  }, [save]);
  const change = useCallback(
    (next: Content, past = remember(steps.current, own.current)) => {
      show(next, past);
      saveSoon();
    },
    [show, saveSoon],
  );
  const move = useCallback(
    (by: typeof goBack<Content>) => {
      const moved = by(steps.current, own.current);
      if (moved !== null) change(moved.now, moved.history);
    },
    [change],
  );

  // What a crash left behind on this device.
  useEffect(() => {
    const kept = readDraft(key, isKept);
    if (kept === null || sameContent(kept.own, base.current)) return dropDraft(key);
    own.current = kept.own;
    join(kept.base, base.current);
    setNote('restored');
    saveSoon();
  }, [key, join, saveSoon]);
  useEffect(() => {
    mayWork.current = canWork;
    if (canWork && !sameContent(own.current, base.current)) save();
  }, [canWork, save]);

  return {
    clipId,
    content,
    state,
    trouble,
    note,
    conflicts,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    place: useCallback((mark: Mark) => change(putMark(own.current, mark)), [change]),
    /** Moves a mark without a step of its own in the history: one drag is one step. */
    drag: useCallback((mark: Mark) => change(putMark(own.current, mark), steps.current), [change]),
    remove: useCallback((at: Place) => change(dropMark(own.current, at)), [change]),
    observe: useCallback((one: Observation) => change(putObservation(own.current, one)), [change]),
    /** Puts the clubhead on a frame, or lays another trail in place of the whole. */
    trace: useCallback((point: TrailPoint) => change(putTrail(own.current, point)), [change]),
    retrace: useCallback((trail: readonly TrailPoint[]) => change({ ...own.current, trail }), [change]),
    undo: useCallback(() => move(goBack), [move]),
    redo: useCallback(() => move(goOn), [move]),
    choose: useCallback(
      (conflict: Conflict, whose: 'mine' | 'theirs') => {
        open.current = open.current.filter((one) => one.key !== conflict.key);
        setConflicts(open.current);
        change(withItem(own.current, conflict.key, conflict[whose]));
      },
      [change],
    ),
    save,
  };
};

export type ClipMarking = ReturnType<typeof useMarking>;
