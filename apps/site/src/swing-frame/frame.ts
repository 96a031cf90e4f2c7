import type { Reply } from '@ballfirst/contracts/client';

type ReplyFrame = Reply<'readReply'>['frames'][number];
/** A frame of a reply; before it is sent it has no picture of its own yet. */
export type Frame = Omit<ReplyFrame, 'still' | 'described'> & Partial<ReplyFrame>;
