/** A saved explanation a coach may put into a reply. `{lead}` and `{trail}` become left or right. */
export type Phrase = { readonly id: string; readonly about: string; readonly text: string };

export const phrases: readonly Phrase[] = [
  {
    id: 'one-thing',
    about: 'how to practise',
    text: 'Work on this one thing only. Everything else can wait until it holds.',
  },
  {
    id: 'film-and-look',
    about: 'how to practise',
    text: 'Fewer balls, more looks: film one swing of three, look, put it right, swing again.',
  },
  {
    id: 'thin-is-progress',
    about: 'what to expect',
    text: 'Expect a few thin ones. For someone who hit the ground first they are a good sign: the low point has moved forward.',
  },
  {
    id: 'overdo-it',
    about: 'what to expect',
    text: 'It has to feel far too much. What feels overdone usually looks just right on film.',
  },
  {
    id: 'why-fat',
    about: 'fat',
    text: 'The club reaches the ground where your weight is. While that is over your {trail} foot, the ground comes first.',
  },
  {
    id: 'ball-is-in-the-way',
    about: 'fat',
    text: 'Brush the ground in front of the ball. The ball is only in the way.',
  },
];
