'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useMemo, useState } from 'react';
import { useClip } from '../../../../../frames/use-clip.ts';
import type { Mark } from '../_marking/marking.ts';
import { choicesOf, firstChoice } from './choices-of.ts';
import { heardAt } from './heard-at.ts';
import { type Tie, tiesBetween } from './tie-frames.ts';
import type { ComparableHere } from './use-comparable.ts';

type Clip = Reply<'readClip'>;
type Given = {
  comparable: ComparableHere;
  clip: Clip;
  club: Reply<'readSubmission'>['club'];
  hand: 'right' | 'left';
  marks: readonly Mark[];
  timesS: readonly number[];
};
const none: readonly Tie[] = [];

/** The swing beside the one on the stage: which it is, how the two are tied, and whether it is turned over. */
export const useCompare = ({ comparable, clip, club, hand, marks, timesS }: Given) => {
  const [on, setOn] = useState(false);
  const [wanted, setWanted] = useState<string | null>(null);
  const [byHand, setByHand] = useState(0);
  const [turned, setTurned] = useState<boolean | null>(null);
  const groups = useMemo(() => choicesOf(comparable.items ?? [], clip.view), [comparable.items, clip.view]);
  const chosen = useMemo(() => {
    const found = groups.flatMap(({ of }) => of).find((one) => one.clip.id === wanted);
    return found ?? firstChoice(groups, club);
  }, [groups, wanted, club]);
  const opening = useClip(on ? (chosen?.clip.media?.rendition ?? null) : null);
  const there = opening.kind === 'open' ? opening.clip.timesS : null;
  const ties = useMemo(() => {
    if (chosen === null || there === null) return none;
    return tiesBetween(
      { marks, timesS, heardAt: heardAt(clip) },
      { marks: chosen.marks, timesS: there, heardAt: heardAt(chosen.clip) },
    );
  }, [marks, timesS, clip, chosen, there]);
  const turns = chosen !== null && chosen.hand !== hand;
  return {
    on,
    toggle: () => setOn((now) => !now),
    comparable,
    groups,
    chosen,
    choose: (clipId: string) => {
      setWanted(clipId);
      setByHand(0);
      setTurned(null);
    },
    opening,
    ties,
    byHand,
    move: (by: number) => setByHand((now) => now + by),
    /** Whether the two play with different hands: then the other one is turned over at first. */
    turns,
    mirror: turned ?? turns,
    turn: (to: boolean) => setTurned(to),
  };
};

export type CompareHere = ReturnType<typeof useCompare>;
