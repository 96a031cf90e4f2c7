'use client';
import { useEffect } from 'react';
import { useKeys } from '../../../../../shell/use-keys.ts';
import { type StageActs, stageKey } from '../_stage/stage-keys.ts';
import type { Play } from '../_stage/use-play.ts';

type Given = {
  acts: StageActs;
  play: Play;
  active: boolean;
  onSheet: () => void;
  onPutRight: () => void;
};

/** A control that has its own use for Enter. */
const ownEnter = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.closest('button, a, summary') !== null &&
  target.closest('[data-stage]') === null;

/** Keys of the desk; undo has the keys of every program too. */
export const useDeskKeys = ({ acts, play, active, onSheet, onPutRight }: Given): void => {
  useKeys((event) => {
    // What lies over the desk has the keys, wherever the focus is.
    if (document.querySelector('dialog[open]') !== null) return false;
    if (event.key === '?') onSheet();
    else if (event.key === 'e' && !event.altKey) onPutRight();
    else if (event.key === 'Enter' && (ownEnter(event.target) || !acts.aiming)) return false;
    else return stageKey(event, acts);
    return true;
  }, active);
  useEffect(() => {
    if (!active) return;
    const up = (event: KeyboardEvent) => event.key === 'p' && play.hold(false);
    const undo = (event: KeyboardEvent) => {
      const typing = event.target instanceof Element && event.target.closest('input, textarea, select');
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || typing) return;
      event.preventDefault();
      if (event.shiftKey) acts.redo();
      else acts.undo();
    };
    window.addEventListener('keyup', up);
    window.addEventListener('keydown', undo);
    return () => {
      window.removeEventListener('keyup', up);
      window.removeEventListener('keydown', undo);
    };
  });
};
