/** Two swings beside each other. */
export const compareWords = {
  open: 'Compare',
  close: 'Stop comparing',
  beside: 'Beside it',
  lastAndBest: 'Last and best',
  collection: "The academy's collection",
  last: 'Last swing',
  best: 'Best swing',
  earlier: 'Earlier swing',
  own: (kind: string, when: string, club: string, solid: number, balls: number) =>
    `${kind}: ${when}, ${club.toLowerCase()}, ${solid} of ${balls} solid`,
  model: (name: string, club: string) => `${name}, ${club.toLowerCase()}`,
  looking: 'Looking for swings to compare with …',
  nothing: 'There is no other swing of this view yet: no earlier one, and none in the collection.',
  opening: 'Opening the other clip …',
  failed: 'The other clip did not load. Choose another one, or load the page again.',
  tied: (moments: readonly string[]) => `Tied at ${moments.join(', ')}; between them both run evenly.`,
  untied:
    'No moment is known of both: they run from their start. Mark impact in this swing, or move the other one until they fit.',
  otherBack: 'Other one frame back',
  otherOn: 'Other one frame on',
  byHand: (frames: number) => `Moved by ${frames > 0 ? '+' : '−'}${Math.abs(frames)}: undo`,
  mirror: 'Turn it over',
  mirroredHands: 'Turned over: the other hand leads',
  picture: (where: string, mirror: boolean) => `The other swing${mirror ? ', turned over' : ''}. ${where}`,
} as const;

/** The academy's own collection of model swings. */
export const collectionWords = {
  title: 'Model swings',
  lead: 'Swings that coaches may show beside a student’s: only clips of this academy, and only with the permission of the player.',
  empty: 'The collection is empty. Open a swing, choose Compare, and keep its clip here.',
  player: 'Player',
  club: 'Club',
  view: 'View',
  permission: 'Permission',
  permittedOn: 'Permitted on',
  kept: (by: string) => `Kept by ${by}`,
  end: 'Take it out',
  endAsk: (name: string) => `Take it out of the collection: ${name}`,
  keepTitle: 'Keep this clip in the collection',
  keepLead:
    'Ask the player first; for a junior, the guardian. Write down who allowed it, how, and for what. Other students’ coaches will show it.',
  name: 'Name in the collection',
  permissionWords: 'What was allowed',
  keep: 'Keep it',
  keptNow: 'Kept in the collection.',
  toCollection: 'To the collection',
} as const;
