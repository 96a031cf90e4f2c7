import type { Readable } from 'node:stream';

export type Intake = {
  /** Everything that has come since the last time; null when nothing more will come. */
  take(): Promise<Buffer[] | null>;
  /** True while we wait for the sender, not the sender for our disk. */
  waits(): boolean;
  /** Since the sender was last heard; 0 while it is not the sender we wait for. */
  silentForMs(): number;
  /** Takes no more; what has come is still given. */
  stop(): void;
};

/** More than this is not held in memory for one sender: it waits until the disk has written. */
const heldAtMost = 512 * 1024;

/** Takes bytes in while the last ones are being written. A sender that breaks off ends it like one that is done. */
export const intakeOf = (source: Readable): Intake => {
  let held: Buffer[] = [];
  let heldBytes = 0;
  let over = source.readableEnded || source.destroyed;
  let heardAt = performance.now();
  let wake: () => void = () => undefined;
  const end = (): void => {
    over = true;
    wake();
  };
  const waits = (): boolean => heldBytes < heldAtMost && !over;
  source.on('data', (chunk: Buffer) => {
    heardAt = performance.now();
    if (over) return;
    held.push(chunk);
    heldBytes += chunk.length;
    if (heldBytes >= heldAtMost) source.pause();
    wake();
  });
  source.on('end', end).on('error', end).on('close', end);
  return {
    take: async () => {
      while (held.length === 0 && !over) {
        await new Promise<void>((woken) => {
          wake = woken;
        });
      }
      if (held.length === 0) return null;
      const taken = held;
      held = [];
      heldBytes = 0;
      source.resume();
      return taken;
    },
    waits,
    silentForMs: () => (waits() ? performance.now() - heardAt : 0),
    stop: end,
  };
};
