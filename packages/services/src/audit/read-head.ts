import { text } from 'node:stream/consumers';
import { addDays } from '@ballfirst/calendar/local-date';
import type { Context } from '../context.ts';
import { Head, headKey, utcDay } from './head-file.ts';

/** Days looked back for the newest head: an academy where nothing happened for longer has none to compare. */
const daysBack = 31;

/** The newest head kept outside the database, null where there is none. A file that is no head is an error. */
export const readHead = async (ctx: Context): Promise<Head | null> => {
  const { blobs, clock } = ctx.resources;
  const today = utcDay(clock.now());
  for (let back = 0; back <= daysBack; back += 1) {
    const key = headKey(ctx.academyId, addDays(today, -back));
    if ((await blobs.size(key)) !== null) return Head.parse(JSON.parse(await text(await blobs.read(key))));
  }
  return null;
};
