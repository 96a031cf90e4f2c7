export const signInWords = {
  title: 'Sign in',
  email: 'Email',
  password: 'Password',
  go: 'Sign in',
  busy: 'Signing in …',
  back: 'You come back to where you were; what you typed there is kept.',
  chooseTitle: 'Which academy?',
  chooseText: 'You belong to more than one academy. Choose the one to work in now.',
  choose: 'Open this academy',
  other: 'Use another address',
} as const;

export const joinWords = {
  title: (academy: string) => `Join ${academy}`,
  lead: 'Under a minute. The rest is asked while your first video uploads.',
  trial: (days: number, starts: 'joining' | 'first-swing') =>
    `${days} days on trial, from ${starts === 'joining' ? 'today' : 'your first swing'}. Nothing is charged unless you join.`,
  price: 'Afterwards',
  promise: (hours: number) => `A coach answers within ${hours} working hours.`,
  name: 'Your name',
  email: 'Email',
  password: 'Password',
  passwordHint: 'Ten characters or more.',
  hand: 'You play',
  age: 'Age group',
  guardianTitle: 'Your guardian',
  guardianText:
    'A junior needs the consent of a parent or guardian before any video is sent. Please fill this in together.',
  guardianName: "Guardian's name",
  relation: 'Relation, for example mother',
  guardianEmail: "Guardian's email",
  consents: 'I am the guardian and I agree to this text.',
  consentTitle: 'How your video is used',
  go: 'Start the trial',
  busy: 'Joining …',
  have: 'You have an account already?',
} as const;
