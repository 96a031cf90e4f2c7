type Act = {
  step: (by: number) => void;
  nudge: (dx: number, dy: number) => void;
  closer: (by: 1 | -1) => void;
};

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Arrows step (with Shift ten), Alt and arrows nudge (with Shift five pixels), plus and minus change the size. */
export const stageKey = (event: KeyboardEvent, act: Act): boolean => {
  const arrow = arrows[event.key];
  if (event.altKey) {
    if (arrow === undefined) return false;
    const px = event.shiftKey ? 5 : 1;
    act.nudge(arrow[0] * px, arrow[1] * px);
    return true;
  }
  if (arrow !== undefined && arrow[0] !== 0) {
    act.step(arrow[0] * (event.shiftKey ? 10 : 1));
    return true;
  }
  if (event.key === '+' || event.key === '-') {
    act.closer(event.key === '+' ? 1 : -1);
    return true;
  }
  return false;
};
