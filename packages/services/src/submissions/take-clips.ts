import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { lockClip } from '../clips/lock-clip.ts';
import type { Context } from '../context.ts';
import { gripView } from '../grip-photo/grip-photo-of.ts';
import type { ClipRow } from '../rows.ts';

/** One refused while the form was filled in is taken too: what was typed arrives, and the reason stands beside it. */
const sendable = new Set(['uploading', 'uploaded', 'preparing', 'ready', 'refused']);

/** One of the student's own clips that is free to send, locked. @throws ProblemError clip-not-yours */
export const takeClip = async (tx: Tx, ctx: Context, studentId: string, id: string): Promise<ClipRow> => {
  const row = await lockClip(tx, ctx, id).catch((error: unknown) => {
    if (error instanceof ProblemError && error.code === 'not-found') throw new ProblemError('clip-not-yours');
    throw error;
  });
  const own = row.studentId === studentId && row.view !== gripView;
  if (!own || row.submissionId !== null || !sendable.has(row.status)) {
    throw new ProblemError('clip-not-yours');
  }
  return row;
};

/** Several of them, in one order for everybody so that two requests never wait on each other. */
export const takeClips = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
  ids: readonly string[],
): Promise<ClipRow[]> => {
  const rows: ClipRow[] = [];
  for (const id of [...new Set(ids)].sort()) rows.push(await takeClip(tx, ctx, studentId, id));
  if (rows.length === 0) throw new ProblemError('clip-missing');
  return rows;
};
