import { Caption, TalkTrack } from '@ballfirst/contracts/http/talk-through';
import type { Prisma } from '@ballfirst/db/generated/client';
import { z } from 'zod';
import { talkPath } from '../clips/keys.ts';
import type { Reply } from '../operation-types.ts';

export const talkInclude = { by: true } as const satisfies Prisma.TalkThroughInclude;
export type TalkRow = Prisma.TalkThroughGetPayload<{ include: typeof talkInclude }>;

/** A talk-through as the contract says it. */
export const talkThroughOf = (row: TalkRow): Reply<'saveTalkThrough'> => ({
  id: row.id,
  clipId: row.clipId,
  by: row.by.name,
  at: row.at.toISOString(),
  durationMs: row.durationMs,
  sound: talkPath(row.id),
  track: TalkTrack.parse(row.track),
  captions: z.array(Caption).parse(row.captions),
});
