/** What keys do on the stage. While something is aimed at or held, arrows move it; else they step. */
export type StageActs = {
  readonly aiming: boolean;
  step: (by: number) => void;
  ends: (which: 'first' | 'last') => void;
  moment: (by: 1 | -1) => void;
  move: (dx: number, dy: number) => void;
  /** Moves the mark that was placed last. */
  nudge: (dx: number, dy: number) => void;
  aim: () => void;
  place: () => boolean;
  letGo: () => boolean;
  next: () => void;
  remove: () => void;
  confirm: () => void;
  toHint: () => void;
  undo: () => void;
  redo: () => void;
  closer: (by: 1 | -1) => void;
  whole: () => void;
  pan: (dx: number, dy: number) => void;
  hold: () => void;
  loop: () => void;
  brighter: (by: 1 | -1) => void;
  lines: () => void;
  fullScreen: () => void;
  compare: () => void;
  /** Goes to where the sound suggests impact. */
  strike: () => void;
  /** Puts the film about the cause into the reply, or takes it out. */
  film: () => void;
};
type Key = Pick<KeyboardEvent, 'key' | 'altKey' | 'shiftKey' | 'repeat'>;

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const pans: Readonly<Record<string, readonly [number, number]>> = {
  j: [-1, 0],
  l: [1, 0],
  i: [0, -1],
  k: [0, 1],
};

const arrowKey = ({ key, altKey, shiftKey }: Key, act: StageActs): boolean => {
  const arrow = arrows[key];
  if (arrow === undefined) return false;
  const by = shiftKey ? 10 : 1;
  const [dx, dy] = [arrow[0] * by, arrow[1] * by];
  if (altKey) act.nudge(dx, dy);
  else if (act.aiming) act.move(dx, dy);
  else if (dx !== 0) act.step(dx);
  else return false;
  return true;
};

/** Does what a key asks for. @returns whether it was one of ours */
export const stageKey = (event: Key, act: StageActs): boolean => {
  if (arrowKey(event, act)) return true;
  const { key, altKey, repeat } = event;
  if (altKey) return false;
  const pan = pans[key];
  if (pan !== undefined) act.pan(...pan);
  else if (key === 'Home') act.ends('first');
  else if (key === 'End') act.ends('last');
  else if (key === ',' || key === '.') act.step(key === ',' ? -1 : 1);
  else if (key === '[' || key === ']') act.moment(key === '[' ? -1 : 1);
  else if (key === '+' || key === '=') act.closer(1);
  else if (key === '-') act.closer(-1);
  else if (key === '0') act.whole();
  else if (key === 'Enter') return act.place();
  else if (key === 'Escape') return act.letGo();
  else if (key === 'a') act.aim();
  else if (key === 'n') act.next();
  else if (key === 'x' || key === 'Delete') act.remove();
  else if (key === 'y') act.confirm();
  else if (key === 't') act.toHint();
  else if (key === 'z') act.undo();
  else if (key === 'Z') act.redo();
  else if (key === 'p') {
    if (!repeat) act.hold();
  } else if (key === 'o') act.loop();
  else if (key === 'b') act.brighter(1);
  else if (key === 'B') act.brighter(-1);
  else if (key === 'g') act.lines();
  else if (key === 'f') act.fullScreen();
  else if (key === 'v') act.compare();
  else if (key === 's') act.strike();
  else if (key === 'c') act.film();
  else return false;
  return true;
};
