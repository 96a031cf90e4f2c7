/** What goes with a reply beside its words: the academy's film, the talk-through. */
export const goesWithWords = {
  title: 'Also in the reply',
  film: (title: string) => `The film “${title}”`,
  filmKey: 'The key c puts it in and takes it out.',
  filmNone: 'The academy keeps no film about this cause.',
  filmKeep: 'Keep one under this week’s faults',
  talk: (time: string) => `Your talk-through, ${time}`,
  talkNone: 'No talk-through is recorded.',
  filmTitle: 'A film about it',
  talkGoes: (time: string) => `With your talk-through of ${time}.`,
  filmIn: (title: string) => `The film “${title}” is in the reply.`,
  filmOut: 'No film is in the reply.',
} as const;
