import type { Position } from '@ballfirst/swing/marks/marks';

/** Moments in which a change shows best, that first. Common practice, no source. */
const telling: readonly Position[] = ['impact', 'finish', 'lead-arm-parallel-down', 'top', 'address'];

type Clip = { readonly id: string; readonly view: string };
type Marked = { readonly clipId: string; readonly position: string; readonly frame: number };
export type SameMoment = {
  readonly moment: Position;
  readonly before: { readonly clipId: string; readonly frame: number };
  readonly after: { readonly clipId: string; readonly frame: number };
};

/**
 * The most telling moment marked in a clip of either swing that were filmed from the same side; null where there is none.
 *
 * @param shown moments that the coach shows in the reply: those come first, the last of them before all, for there the
 * cause is seen; set-up tells least
 */
export const sameMoment = (
  then: readonly Clip[],
  now: readonly Clip[],
  marks: readonly Marked[],
  shown: readonly string[] = [],
): SameMoment | null => {
  const frameOf = (clipId: string, position: Position): number | undefined =>
    marks.find((mark) => mark.clipId === clipId && mark.position === position)?.frame;
  const chosen = shown.flatMap((one) => telling.filter((moment) => moment === one && moment !== 'address'));
  for (const moment of [...chosen.reverse(), ...telling]) {
    for (const before of then) {
      for (const after of now.filter(({ view }) => view === before.view)) {
        const [from, to] = [frameOf(before.id, moment), frameOf(after.id, moment)];
        if (from !== undefined && to !== undefined) {
          return {
            moment,
            before: { clipId: before.id, frame: from },
            after: { clipId: after.id, frame: to },
          };
        }
      }
    }
  }
  return null;
};
