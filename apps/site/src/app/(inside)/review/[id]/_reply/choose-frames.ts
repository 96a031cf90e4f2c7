import type { Reply } from '@ballfirst/contracts/client';
import type { Cause } from '@ballfirst/library/types';
import { momentForStudent } from '../../../../../words/moments-for-student.ts';
import { frameOfMoment, type Marking } from '../_marking/marking.ts';
import { momentOfCause } from './moment-of-cause.ts';

export type ReplyFrame = Reply<'saveReply'>['frames'][number];

/** The pictures of a reply, chosen from what was marked: address, and the moment at which the cause shows. */
export const chooseFrames = (
  { clipId, marks }: Pick<Marking, 'clipId' | 'marks'>,
  cause: Cause | null,
  hand: 'right' | 'left',
): ReplyFrame[] => {
  const marked = [...new Set(marks.map((mark) => mark.position))];
  const moments = [...new Set(['address' as const, momentOfCause(cause, marked)])];
  return moments.flatMap((position) => {
    const frame = frameOfMoment(marks, position);
    return frame === null ? [] : [{ clipId, frame, position, caption: momentForStudent(position, hand) }];
  });
};
