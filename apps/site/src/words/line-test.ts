type Units = 'metric' | 'imperial';

const number = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });

/** A length from the line in the student's own unit, without its side. */
export const lengthFromLine = (mm: number, units: Units): string =>
  units === 'metric' ? `${number.format(Math.abs(mm) / 10)} cm` : `${number.format(Math.abs(mm) / 25.4)} in`;

/** Where a brush began, in words. */
export const placeInWords = (mm: number, units: Units): string => {
  if (Math.round(mm) === 0) return 'on the line';
  return `${lengthFromLine(mm, units)} ${mm < 0 ? 'behind' : 'past'} the line`;
};

export const lineTestWords = {
  title: 'Line test',
  lead: 'Ten brushes over a line, without a ball. Where each mark begins is where your club meets the ground: the most honest number there is about fat and thin.',
  steps: [
    'Draw a line on the ground, square to the target: chalk, foot powder or a strip of tape on a mat, a tee scratch on grass.',
    'Stand so that the line is where the ball would lie. Nobody stands near you or in front.',
    'Brush the ground ten times, hip-high to hip-high, as you would hit a ball. Move a hand along between two.',
    'Note where each mark begins: behind the line, on it, or past it towards the target.',
  ],
  pad: 'Where the brush began',
  padHint: 'Tap the drawing where the mark begins, or move the slider and note it.',
  slider: 'Place of this brush',
  add: 'Note this brush',
  undo: 'Take the last one back',
  noted: (count: number) => `${count} of 10 noted`,
  three: 'Three at least; ten tell most.',
  save: 'Keep the test',
  saving: 'Keeping …',
  saved: 'Kept. Your coach sees it.',
  line: 'line',
  target: 'target',
  drawing: (count: number) => `A line from above with ${count} brushes, the target to one side`,
  behindOf: (behind: number, of: number) => `${behind} of ${of} began behind the line.`,
  mean: (place: string, low: string, high: string) =>
    `On average ${place}; with so few brushes anywhere from ${low} to ${high} (95 %).`,
  earlier: 'Tests so far',
  none: 'No line test yet.',
  by: (name: string) => `noted by ${name}`,
  toHome: 'Back to your home page',
  open: 'Do a line test',
  note: 'Note a line test',
} as const;
