import type { Reply } from '@ballfirst/contracts/client';

type Submission = Reply<'readSubmission'>;
type Clip = Reply<'readClip'>;

/** What each word of the closed lists is called on a screen. */
export const clubNames: Record<Submission['club'], string> = {
  driver: 'Driver',
  fairway: 'Fairway wood',
  hybrid: 'Hybrid',
  '5-iron': '5-iron',
  '6-iron': '6-iron',
  '7-iron': '7-iron',
  '8-iron': '8-iron',
  '9-iron': '9-iron',
  wedge: 'Wedge',
};

export const lieNames: Record<Submission['lie'], string> = {
  mat: 'Mat',
  fairway: 'Fairway',
  tee: 'Tee',
  rough: 'Rough',
  sand: 'Sand',
  slope: 'Slope',
  net: 'Into a net',
};

export const viewNames: Record<Clip['view'], string> = {
  'face-on': 'Face-on',
  'down-the-line': 'Down the line',
};

export const swingLengthNames: Record<Clip['swingLength'], string> = {
  full: 'Full swing',
  'three-quarter': 'Three-quarter',
  'hip-high': 'Hip-high',
  rehearsal: 'Rehearsal, no ball',
};

export const standingNames: Record<Submission['student']['standing'], string> = {
  invited: 'Invited',
  trial: 'On trial',
  lapsed: 'Lapsed',
  paid: 'Paid',
  paused: 'Paused',
  left: 'Left',
};

/** Why a standing changed: what the service writes by itself is a word of its own, what people write stands as it is. */
const ownReasons: Readonly<Record<string, string>> = {
  joined: 'joined the academy',
  'trial-ended': 'the trial ended',
};
export const standingReason = (reason: string): string => ownReasons[reason] ?? reason;

/** Strike outcomes as a coach says them, and as a student taps them. */
export const outcomeNames: Record<NonNullable<Submission['leadFault']>, string> = {
  solid: 'Solid',
  fat: 'Fat',
  thin: 'Thin',
  topped: 'Topped',
  heel: 'Heel',
  toe: 'Toe',
  shank: 'Shank',
  sky: 'Sky',
};

export const outcomeForStudent: Record<NonNullable<Submission['leadFault']>, string> = {
  ...outcomeNames,
  fat: 'Ground first',
  shank: 'Off the neck',
  sky: 'Straight up',
};

export const handNames = { right: 'Right-handed', left: 'Left-handed' } as const;
export const ageNames = { adult: 'Adult', junior: 'Junior, under 18', senior: 'Senior' } as const;
export const roleNames = { coach: 'Coach', manager: 'Manager', student: 'Student' } as const;
export const placeNames = { mat: 'Mat', grass: 'Grass', home: 'Home' } as const;
const exaggerations = { mild: 'Mild', firm: 'Firm', strong: 'Strong' } as const;
export const exaggerationNames: typeof exaggerations & Readonly<Record<string, string>> = exaggerations;
export const tickNames = { grip: 'Grip', handle: 'Handle', hips: 'Hips', ball: 'Ball' } as const;
export const painNames = { none: 'No pain', new: 'New pain', worse: 'Worse than usual' } as const;
export const startNames = {
  left: 'Starts left',
  straight: 'Starts straight',
  right: 'Starts right',
  'cannot-see': 'Start not seen',
} as const;
export const curveNames = {
  left: 'curves left',
  none: 'no curve',
  right: 'curves right',
  'cannot-see': 'curve not seen',
} as const;

export const rungNames: Record<string, string> = {
  rehearsal: 'Rehearsal',
  brush: 'Brush the ground',
  'hip-high': 'Hip-high',
  'three-quarter': 'Three-quarter',
  full: 'Full swing',
  transfer: 'On the course',
};

export const verdictNames = {
  passed: 'Step passed',
  stay: 'Stay on this step',
  back: 'One step back',
  hold: 'On hold',
} as const;

export const submissionStatusNames: Record<Submission['status'], string> = {
  preparing: 'Being prepared',
  'needs-clip': 'Needs another video',
  waiting: 'With your coach',
  answered: 'Answered',
  'film-again': 'Film it again',
  withdrawn: 'Withdrawn',
};

/** A name for an id of the library that this screen was not given: its words, spelt out. */
export const spelt = (id: string): string => {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};
