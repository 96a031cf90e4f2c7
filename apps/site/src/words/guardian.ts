/** A guardian's consent: as a junior asks for it, and as the guardian reads and gives it. */
export const guardianWords = {
  firstTitle: 'Your guardian agrees first',
  firstLead:
    'You are under eighteen: before any video is sent, a parent or guardian reads a text and agrees. We write a letter with a link; it takes a minute.',
  asked: (name: string, email: string) => `We have written to ${name} at ${email}.`,
  askedThen: 'The letter says how to agree. As soon as that is done you can film and send here.',
  givenForStudent: 'Your guardian has agreed. Film your swing now.',
  withdrawnForStudent:
    'Your guardian has withdrawn the consent. Nothing can be sent until it is given again.',
  look: 'Look whether it is done',
  askTitle: 'Whom may we write to?',
  askAgainTitle: 'Write once more, or to somebody else',
  name: 'Name of your guardian',
  relation: 'Relation, for example mother',
  email: 'Email of your guardian',
  ask: 'Send the letter',
  asking: 'Sending …',

  title: 'Your consent',
  noLink: 'This page opens from the link in our letter to you.',
  opening: 'Opening …',
  lead: (student: string, academy: string) =>
    `${student} would like to send videos of golf swings to ${academy} and be answered by a coach.`,
  hello: (name: string) => `For ${name}`,
  textTitle: 'What you agree to',
  purposesTitle: 'Beyond coaching, each only if you like',
  quality: 'Coaches of the academy may look at the videos to check how well they answer.',
  teaching: 'The academy may show the videos when it teaches its own coaches.',
  agree: 'I am the guardian and I agree',
  keep: 'Keep what I changed',
  busy: 'One moment …',
  given: 'You have agreed. Keep the letter: with its link you can change or withdraw this at any time.',
  withdrawn: 'You have withdrawn your consent. Nothing more can be sent. You can agree again below.',
  withdraw: 'Withdraw my consent',
  withdrawWhat: 'Nothing more can be sent, and swings that were not answered yet leave the coaches’ list.',
  withdrawSure: 'Yes, withdraw it',
  cancel: 'Leave it as it is',
  contact: (address: string) => `If anything worries you, write to: ${address}.`,
  supervised:
    'While a junior swings an adult is there, and others keep well clear of the club. If anything hurts: stop, and see a clinician.',
} as const;
