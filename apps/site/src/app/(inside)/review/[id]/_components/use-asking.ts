'use client';
import { useMemo } from 'react';
import { momentOfFrame } from '../_marking/marking.ts';
import { carriedTo } from '../_marking/still-points.ts';
import { usePass } from '../_stage/use-pass.ts';

/** The pass, with what the frame on the stage stands for and the still points that are carried over to it. */
export const useAsking = (given: Parameters<typeof usePass>[0]) => {
  const { marking, size, stage } = given;
  const { marks } = marking.content;
  const { frame } = stage;
  const asking = usePass(given);
  const { target, confirm } = asking;
  const moment = momentOfFrame(marks, frame, target);
  const carried = useMemo(() => carriedTo(marks, frame, moment, size), [marks, frame, moment, size]);
  const confirmCarried = () => moment !== null && confirm(carried);
  return { ...asking, moment, carried, confirmCarried };
};

export type AskingHere = ReturnType<typeof useAsking>;
