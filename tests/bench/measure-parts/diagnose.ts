// A swing of its own for every turn, so that nothing can be remembered from the one before, and all that is reckoned of it.
import { rank } from '@ballfirst/diagnosis/rank';
import { readAll } from '@ballfirst/diagnosis/read-all';
import { causes } from '@ballfirst/library/causes';
import type { Mark, Picture, Setting } from '@ballfirst/swing/marks/marks';
import { behindPicture, plantedBehind } from '@ballfirst/swing/marks/planted-behind';
import { plantedFully, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';

export type Swing = { readonly marks: readonly Mark[]; readonly picture: Picture; readonly setting: Setting };

const club = { hand: 'right', club: '8-iron', swingLength: 'full' } as const;

/** The swing of a turn, fully marked; face-on and from behind by turns. */
export const swingOf = (turn: number): Swing =>
  turn % 2 === 0
    ? {
        marks: plantedFully({ hipToTop: -(turn % 90), gripEndAddress: 45 - (turn % 60) }),
        picture: plantedPicture,
        setting: { ...club, view: 'face-on' },
      }
    : {
        marks: plantedBehind({ seatTowardBall: turn % 80, handsRise: turn % 50 }),
        picture: behindPicture,
        setting: { ...club, view: 'down-the-line' },
      };

/** Measurements, readings and ranked causes. @returns how many measurements there are */
export const diagnose = ({ marks, picture, setting }: Swing): number => {
  const { measurements } = measure(marks, picture, setting);
  const readings = readAll(measurements, setting);
  const fault = setting.view === 'face-on' ? 'fat' : 'shank';
  rank({ fault, readings, observations: [], causes });
  return measurements.length;
};
