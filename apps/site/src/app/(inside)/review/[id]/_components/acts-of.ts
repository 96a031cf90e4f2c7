import type { Part } from '../../../../../frames/draw-picture.ts';
import { frameOfMoment, type Mark } from '../_marking/marking.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import type { StageActs } from '../_stage/stage-keys.ts';
import type { Play } from '../_stage/use-play.ts';
import type { StageView } from '../_stage/use-stage.ts';
import type { AskingHere } from './use-asking.ts';

type Given = {
  stage: StageView;
  asking: AskingHere;
  marking: ClipMarking;
  positions: readonly Mark['position'][];
  play: Play;
  part: Part;
  canWork: boolean;
  onLines: () => void;
  fullScreen: () => void;
  onCompare: () => void;
  onFilm: () => void;
  /** The frame at which the sound suggests impact. */
  heard: number | null;
};

/** So much of what is shown goes by with one press. */
const panShare = 0.12;

/** What each key of the desk does now. */
export const actsOf = (given: Given): StageActs => {
  const { stage, asking, marking, positions, play, part, canWork } = given;
  const { marks } = marking.content;
  const stepTo = (frame: number) => {
    play.stop();
    stage.goTo(frame);
  };
  return {
    aiming: asking.aiming,
    step: (by) => {
      play.stop();
      stage.step(by);
    },
    ends: (which) => stepTo(which === 'first' ? 0 : stage.last),
    moment: (by) => {
      const known = positions
        .map((position) => frameOfMoment(marks, position))
        .filter((frame) => frame !== null)
        .sort((a, b) => a - b);
      const there =
        by === 1
          ? known.find((frame) => frame > stage.frame)
          : known.findLast((frame) => frame < stage.frame);
      if (there !== undefined) stepTo(there);
    },
    move: asking.move,
    nudge: asking.nudge,
    aim: asking.startAim,
    place: () => {
      if (asking.aim !== null && stage.drawn === stage.frame) asking.place(stage.frame, asking.aim);
      else if (asking.aim === null) asking.letGo();
      return true;
    },
    letGo: asking.letGo,
    next: asking.skip,
    remove: () => asking.remove(asking.held ?? asking.selected),
    confirm: () => canWork && asking.confirmHere(),
    toHint: asking.goToHint,
    undo: () => canWork && marking.undo(),
    redo: () => canWork && marking.redo(),
    closer: stage.closer,
    whole: stage.whole,
    pan: (dx, dy) => stage.pan(dx * part.width * panShare, dy * part.height * panShare),
    hold: () => play.hold(true),
    loop: play.loop,
    brighter: stage.brighter,
    lines: given.onLines,
    fullScreen: given.fullScreen,
    compare: given.onCompare,
    film: () => canWork && given.onFilm(),
    strike: () => given.heard !== null && stepTo(given.heard),
  };
};
