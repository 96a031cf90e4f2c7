// All measurements of one fully marked swing with their doubt, the readings against bands and the ranked causes.
import { writeFileSync } from 'node:fs';
import { rank } from '@ballfirst/diagnosis/rank';
import { readAll } from '@ballfirst/diagnosis/read-all';
import { causes } from '@ballfirst/library/causes';
import type { Mark, Picture, Setting } from '@ballfirst/swing/marks/marks';
import { behindPicture, plantedBehind } from '@ballfirst/swing/marks/planted-behind';
import { plantedFully, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';

type Swing = { readonly marks: readonly Mark[]; readonly picture: Picture; readonly setting: Setting };

const n = process.env.BENCH_QUICK === '1' ? 500 : 5000;
const club = { hand: 'right', club: '8-iron', swingLength: 'full' } as const;

/** A swing of its own for every turn, so that nothing can be remembered from the one before. */
const swingOf = (turn: number): Swing =>
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

let measured = 0;
const diagnose = ({ marks, picture, setting }: Swing): number => {
  const { measurements } = measure(marks, picture, setting);
  const readings = readAll(measurements, setting);
  measured += measurements.length;
  const fault = setting.view === 'face-on' ? 'fat' : 'shank';
  return rank({ fault, readings, observations: [], causes }).length;
};

for (let turn = 0; turn < 200; turn += 1) diagnose(swingOf(turn));
measured = 0;
const times: number[] = [];
const cpuBefore = process.cpuUsage();
for (let turn = 0; turn < n; turn += 1) {
  const swing = swingOf(turn);
  const begun = performance.now();
  diagnose(swing);
  times.push(performance.now() - begun);
}
const { user, system } = process.cpuUsage(cpuBefore);
times.sort((a, b) => a - b);
const at = (share: number) => times[Math.min(n - 1, Math.ceil(share * n) - 1)] ?? Number.NaN;

const figures = [
  { what: 'p50-ms', value: at(0.5), unit: 'ms', n },
  { what: 'p95-ms', value: at(0.95), unit: 'ms', n },
  { what: 'p99-ms', value: at(0.99), unit: 'ms', n },
  { what: 'mean-processor-ms', value: (user + system) / 1000 / n, unit: 'ms', n },
  { what: 'measurements-a-swing', value: measured / n, unit: 'measurements', n },
];

const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
