import type { Course } from './course.ts';
import type { Draw } from './draw.ts';
import type { Miss } from './ten-balls.ts';

/** What students write with a first swing, by the miss that brought them. */
const first: Readonly<Record<'fat' | 'thin' | 'other', readonly string[]>> = {
  fat: [
    'Everything behind the ball.',
    'Fat, then thin, then fat.',
    'The divot starts a hand behind the ball. My wrists are tired of it.',
    'Off grass I dig. Off the mat nobody notices but me.',
    'Old habits. Twenty years of them.',
    'It happens most when I want it most.',
    'The ball comes out weak and the ground shakes.',
    'Good in the evening, fat in the morning. Is it the grass?',
    'My playing partners have stopped saying anything.',
  ],
  thin: [
    'They sting and run. Never a divot.',
    'Thin with every iron, fine with the driver.',
    'It clicks instead of thuds. I miss the thud.',
  ],
  other: ['Something is off, I cannot say what.', 'Help.'],
};

/** And with a later one, by how it goes. */
const later: Readonly<Record<Course, readonly string[]>> = {
  better: [
    'Better, I think. The bad ones are less bad.',
    'The line helps. I brush where I should, most of the time.',
    'Played nine holes, only two fat ones.',
    'It feels far too much, but the ball goes.',
  ],
  plateau: [
    'No change that I can see. I do practise.',
    'Some days yes, some days no.',
    'Stuck at the same place. Shall I go on like this?',
  ],
  worse: ['It gets worse the more I try.', 'I think I have lost it altogether.'],
  'over-correcting': [
    'Hardly any fat ones now. But I hit the ball in its middle all the time.',
    'Now they all run along the ground. Is that what you meant by progress?',
  ],
};

const poolOf = (miss: Miss) => (miss === 'fat' || miss === 'thin' ? first[miss] : first.other);

/** A line in a student's own words. */
export const noteOf = (
  draw: Draw,
  of: { readonly miss: Miss; readonly course: Course; readonly number: number },
): string => draw.pick(of.number === 0 ? poolOf(of.miss) : later[of.course]);
