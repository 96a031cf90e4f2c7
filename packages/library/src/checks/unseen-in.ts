import type { CameraView, Cause } from '../types.ts';

/**
 * Why a cause cannot be seen in a view, for a coach; null where it can.
 *
 * @example unseenIn(causeById('out-to-in'), 'face-on') // 'Not to be seen face-on: …'
 */
export const unseenIn = (cause: Pick<Cause, 'unseen'>, view: CameraView): string | null =>
  cause.unseen[view] ?? null;
