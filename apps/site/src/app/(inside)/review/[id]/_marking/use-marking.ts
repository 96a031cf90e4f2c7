'use client';
import type { Place } from '@ballfirst/swing/place';
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Trouble, troubleOf } from '../../../../../http/trouble.ts';
import {
  type Content,
  dropMark,
  type Evidence,
  keyOf,
  type Mark,
  type Marking,
  mergeMarking,
  type Observation,
  putMark,
  putObservation,
} from './marking.ts';
import { saveMarking } from './save-marking.ts';

type First = { marking: Marking; evidence: Evidence | null };
export type SaveState = 'saved' | 'unsaved' | 'saving';

const restMs = 250;

/** The marks and observations of one clip: changed at once, saved one request after another, merged where two write. */
export const useMarking = (submissionId: string, first: First) => {
  const { clipId } = first.marking;
  const [content, setContent] = useState<Content>(first.marking);
  const [evidence, setEvidence] = useState(first.evidence);
  const [state, setState] = useState<SaveState>('saved');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [merged, setMerged] = useState(false);
  const own = useRef<Content>(first.marking);
  const version = useRef(first.marking.version);
  const touched = useRef({ marks: new Set<string>(), observations: new Set<string>() });
  const atWork = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);

  const save = useCallback(async () => {
    if (atWork.current) return;
    atWork.current = true;
    setState('saving');
    const sent = touched.current;
    const sentContent = own.current;
    touched.current = { marks: new Set(), observations: new Set() };
    try {
      const saved = await saveMarking({ id: submissionId, clipId }, version.current, sentContent, sent);
      version.current = saved.marking.version;
      own.current = mergeMarking(saved.marking, own.current, touched.current);
      setContent(own.current);
      setEvidence(saved.evidence);
      setTrouble(null);
      if (saved.merged) setMerged(true);
      atWork.current = false;
      if (touched.current.marks.size + touched.current.observations.size > 0) void save();
      else setState('saved');
    } catch (error) {
      for (const key of sent.marks) touched.current.marks.add(key);
      for (const key of sent.observations) touched.current.observations.add(key);
      atWork.current = false;
      setState('unsaved');
      setTrouble(troubleOf(error));
    }
  }, [submissionId, clipId]);

  const change = useCallback(
    (next: Content) => {
      own.current = next;
      setContent(next);
      setState((now) => (now === 'saving' ? now : 'unsaved'));
      if (timer.current !== null) clearTimeout(timer.current);
      timer.current = setTimeout(save, restMs);
    },
    [save],
  );

  const place = useCallback(
    (mark: Mark) => {
      touched.current.marks.add(keyOf(mark));
      change(putMark(own.current, mark));
    },
    [change],
  );
  const remove = useCallback(
    (at: Place) => {
      touched.current.marks.add(keyOf(at));
      change(dropMark(own.current, at));
    },
    [change],
  );
  const observe = useCallback(
    (observation: Observation) => {
      touched.current.observations.add(observation.key);
      change(putObservation(own.current, observation));
    },
    [change],
  );

  useEffect(() => {
    const warn = (event: BeforeUnloadEvent) => {
      if (touched.current.marks.size + touched.current.observations.size > 0) event.preventDefault();
    };
    window.addEventListener('beforeunload', warn);
    return () => window.removeEventListener('beforeunload', warn);
  }, []);

  return { clipId, content, evidence, state, trouble, merged, place, remove, observe, save };
};

export type ClipMarking = ReturnType<typeof useMarking>;
