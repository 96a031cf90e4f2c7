'use client';
import { useCallback, useRef, useState } from 'react';
import { asksFirst, type Doubt, judgeClip } from '../../../../clip-check/judge-clip.ts';
import { lookAtClip } from '../../../../clip-check/look-at-clip.ts';

export type Checked =
  | { readonly kind: 'none' }
  | { readonly kind: 'looking'; readonly fileName: string }
  | { readonly kind: 'asks'; readonly file: File; readonly doubts: readonly Doubt[] }
  | { readonly kind: 'told'; readonly fileName: string; readonly doubts: readonly Doubt[] };

/** Looks at a chosen video on the device first; one with a doubt waits for the student's word, any other goes on at once. */
export const useClipCheck = (onGood: (file: File) => void) => {
  const [checked, setChecked] = useState<Checked>({ kind: 'none' });
  const latest = useRef<File | null>(null);
  const good = (file: File, doubts: readonly Doubt[]) => {
    setChecked({ kind: 'told', fileName: file.name, doubts });
    onGood(file);
  };
  const check = async (file: File) => {
    latest.current = file;
    setChecked({ kind: 'looking', fileName: file.name });
    const look = await lookAtClip(file);
    if (latest.current !== file) return;
    const doubts = look === null ? [] : judgeClip(look);
    if (asksFirst(doubts)) setChecked({ kind: 'asks', file, doubts });
    else good(file, doubts);
  };
  const anyway = () => {
    if (checked.kind === 'asks') good(checked.file, []);
  };
  const forget = useCallback(() => {
    latest.current = null;
    setChecked({ kind: 'none' });
  }, []);
  return { checked, check, anyway, forget };
};
