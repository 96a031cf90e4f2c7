export const replyWords = {
  title: 'Reply',
  from: (coach: string) => `From ${coach}`,
  picture: 'Your swing, marked',
  pictureOf: (caption: string, marks: readonly string[]) =>
    `${caption === '' ? 'A moment of your swing' : caption}${marks.length === 0 ? '' : `, marked: ${marks.join(', ')}`}`,
  pictureComes: 'The picture is being drawn …',
  pictureFailed: 'This picture could not be drawn here. You see the first picture of the video instead.',
  marksShown: 'Marked on the picture',
  more: 'More pictures',
  play: 'Play your swing',
  playLabel: 'Your swing',
  slow: 'A quarter of the speed',
  words: 'What your coach says',
  ticks: 'Set-up first',
  tickHint: 'Put these right before each swing; then forget them.',
  corrections: 'Corrections',
  corrected: 'Corrected',
  before: 'Before, from',
  correct: 'Correct the words',
  correctWords: 'The words of the reply',
  correctHint:
    'The student is told, and what it said before stays readable. Cause and drill stay as they are.',
  correctGo: 'Save the correction',
  correcting: 'Saving …',
  correctBack: 'Leave it as it is',
  practise: 'Log practice',
  print: 'Print the drill card',
  home: 'Home',
  toDrill: (drill: string) => `Your drill: ${drill}`,
  noProgramme: 'No drill this time.',
} as const;

export const drillWords = {
  card: 'Drill card',
  feel: 'What to feel',
  station: 'Your station',
  steps: 'How to do it',
  build: 'Set it up',
  needs: 'You need',
  overCorrection: 'What may go wrong',
  overCorrectionLead: 'Thin is fine: it works.',
  dose: 'How much',
  doseText: (minutes: number, balls: number, weekly: number) =>
    `${minutes} minutes at a time, ${weekly} minutes a week, no more than ${balls} balls or swings at a time.`,
  exaggeration: 'How far to overdo it',
  stop: 'When to stop',
  stopText: (minutes: number, balls: number) =>
    `After ${minutes} minutes or ${balls} balls, whichever comes first. At once if anything hurts.`,
  cautions: 'Cautions for this drill',
} as const;

export const stationWords = {
  places: 'Where you practise',
  drawing: (place: string) => `The station on ${place} from above, to scale`,
  onPlace: { mat: 'a mat', grass: 'grass', home: 'a rug at home' },
  target: 'target',
  targetLine: 'target line',
  spot: 'where a ball would lie',
  grip: 'one grip length (26 cm)',
  toScale: 'Drawn to scale, seen from above.',
  cm: (distance: string) => `${distance} cm`,
} as const;
