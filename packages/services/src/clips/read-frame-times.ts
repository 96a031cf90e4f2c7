import { z } from 'zod';
import type { Context } from '../context.ts';
import { framesKey } from './keys.ts';

const Table = z.object({ timesS: z.array(z.number()) });

/** The time of each frame of a clip's rendition in seconds, from the table made with it; null where there is none. */
export const readFrameTimes = async (ctx: Context, clipId: string): Promise<readonly number[] | null> => {
  const { blobs } = ctx.resources;
  const key = framesKey({ academyId: ctx.academyId, clipId });
  if ((await blobs.size(key)) === null) return null;
  const parts: Buffer[] = [];
  for await (const part of await blobs.read(key)) parts.push(Buffer.from(part));
  return Table.parse(JSON.parse(Buffer.concat(parts).toString('utf8'))).timesS;
};
