import { nudges } from '@ballfirst/progress/choose-nudge';
import type { Reply } from '../operation-types.ts';

/** Every reminder and whether the academy sends it. */
export const rulesOf = (off: readonly string[]): Reply<'readReminderRules'> => ({
  items: nudges.map((kind) => ({ kind, on: !off.includes(kind) })),
});
