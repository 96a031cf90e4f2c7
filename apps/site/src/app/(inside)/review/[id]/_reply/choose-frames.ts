import type { Reply } from '@ballfirst/contracts/client';
import type { Cause } from '@ballfirst/library/types';
import { momentForStudent } from '../../../../../words/moments-for-student.ts';
import { frameOfMoment, type Marking } from '../_marking/marking.ts';
import { momentsOfCause } from './moment-of-cause.ts';

export type ReplyFrame = Reply<'saveReply'>['frames'][number];

/** The pictures of a reply, chosen from what was marked: address, and the two moments at which the cause shows best. */
export const chooseFrames = (
  { clipId, marks }: Pick<Marking, 'clipId' | 'marks'>,
  cause: Cause | null,
  hand: 'right' | 'left',
): ReplyFrame[] => {
  const marked = [...new Set(marks.map((mark) => mark.position))];
  const moments = [...new Set(['address' as const, ...momentsOfCause(cause, marked).slice(0, 2)])];
  return moments.flatMap((position) => {
    const frame = frameOfMoment(marks, position);
    return frame === null ? [] : [{ clipId, frame, position, caption: momentForStudent(position, hand) }];
  });
};
