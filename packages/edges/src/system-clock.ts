import { readFileSync } from 'node:fs';
import type { Clock } from '@ballfirst/services/ports';

export const systemClock: Clock = { now: () => new Date() };

/**
 * The system's time moved by the milliseconds written in a file, read on every call: rehearsals move time this way.
 * No file, or one without a whole number: not moved.
 */
export const clockFromFile = (path: string): Clock => ({
  now: () => {
    let offsetMs = 0;
    try {
      offsetMs = Number(readFileSync(path, 'utf8').trim());
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
    }
    return new Date(Date.now() + (Number.isSafeInteger(offsetMs) ? offsetMs : 0));
  },
});
