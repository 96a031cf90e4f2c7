import type { Doubt } from '../clip-check/judge-clip.ts';

type View = 'face-on' | 'down-the-line';

/** Filming: where the phone stands, the video, and what may be wrong with it. */
export const filmWords = {
  usual: 'Film your usual miss, not your best swing.',
  safe: 'Phone on a stand. Nobody stands on the ball side or in line with the ball; others keep well clear of the club.',
  junior: 'Under eighteen: an adult is there while you film and practise.',
  place: {
    'face-on': 'At hand height, four big steps away, opposite your chest.',
    'down-the-line': 'At hand height, behind you, looking along your hands at the target.',
  } satisfies Record<View, string>,
  slow: 'Slow motion if your phone has it, the whole swing from set-up to finish, phone upright.',
  drawingHeight:
    'Seen from the side: the phone stands upright on a stand, as high as your hands when you address the ball, about one metre.',
  handHeight: 'as high as your hands',
  steps: 'four steps',
  nobody: 'nobody here',
  side: { 'face-on': 'Opposite your chest', 'down-the-line': 'Behind you' } satisfies Record<View, string>,
  sideOf: (fileName: string) => `Where the phone stood for “${fileName}”`,
  behindAlso: 'From behind instead, or as well',
  behindWhen:
    'Only for shanks, strikes off the heel or toe, and balls that start or curve off line, or when your coach asks for it.',
  behindHelps: 'One more view helps with this miss',
  behindWhy:
    'This miss shows best from behind. If you have a minute, film one more swing from there. You can send without.',
  choose: { 'face-on': 'Choose the video', 'down-the-line': 'Add a video from behind' } satisfies Record<
    View,
    string
  >,
  chooseOther: {
    'face-on': 'Choose another video',
    'down-the-line': 'Choose another one from behind',
  } satisfies Record<View, string>,
  remove: 'Leave this one out',
  looking: 'Looking at the video …',
  doubtTitle: 'Look at this first',
  doubts: {
    'too-short': 'It is very short. Film from set-up to finish, so that the whole swing is on it.',
    'too-long': 'It is longer than half a minute. Cut it to the one swing, or it will be refused.',
    'too-dark': 'It is dark. With the light behind the phone your coach sees the club.',
    'not-portrait': 'It is filmed sideways. Upright, the phone sees head, hands and club from nearer by.',
    'low-rate':
      'It has few pictures a second. Your coach can read your body from it, but not the club near the ball: for that, film in slow motion.',
  } satisfies Record<Doubt, string>,
  anyway: 'Send it anyway',
  guide: 'How to film it, with drawings',
} as const;
