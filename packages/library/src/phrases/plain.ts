import type { Phrase } from './phrase.ts';

const say = (id: string, about: string, text: string): Phrase => ({ id, kind: 'plain', about, text });

/** What may be said whatever the cause. */
export const plainPhrases: readonly Phrase[] = [
  say(
    'how-often',
    'opening',
    '{player}, I have looked at your swing with the {club}: it was {fault} in {count} of {balls}.',
  ),
  say('one-drill', 'how to practise', 'Your drill is “{drill}”. Do nothing else until it holds.'),
  say(
    'one-thing',
    'how to practise',
    'Work on this one thing only. Everything else can wait until it holds.',
  ),
  say(
    'film-and-look',
    'how to practise',
    'Fewer balls, more looks: film one swing of three, look, put it right, swing again.',
  ),
  {
    ...say(
      'thin-is-progress',
      'what to expect',
      'Expect a few thin ones. For someone who hit the ground first they are a good sign: the low point has moved forward.',
    ),
    faults: ['fat'],
  },
  say(
    'overdo-it',
    'what to expect',
    'It has to feel far too much. What feels overdone usually looks just right on film.',
  ),
  say(
    'stop-if-it-hurts',
    'safety',
    'Stop if anything hurts, and have it looked at before you go on. Keep the space around you clear.',
  ),
  {
    ...say(
      'why-fat',
      'fat',
      'The club reaches the ground where your weight is. While that is over your {trail} foot, the ground comes first.',
    ),
    faults: ['fat'],
  },
  {
    ...say(
      'ball-is-in-the-way',
      'fat',
      'Brush the ground in front of the ball. The ball is only in the way.',
    ),
    faults: ['fat'],
  },
  {
    ...say(
      'low-point-forward',
      'fat',
      'The way you swing this club now, about {often} swings meet the ground well before the ball. The lowest point of your swing belongs about {forward} nearer the target: that is what you practise for. It is reckoned from a few swings, so take it as a direction and not as a promise.',
    ),
    faults: ['fat'],
    views: ['face-on'],
  },
];
