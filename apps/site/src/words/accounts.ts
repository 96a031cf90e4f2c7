export const forgottenWords = {
  title: 'Forgotten password',
  lead: 'Give your address. If it is one we know, a letter with a link is on its way: it works once, for half an hour.',
  email: 'Email',
  go: 'Send the letter',
  busy: 'Sending …',
  sent: 'Look in your mail',
  sentText:
    'If we know this address, the letter comes within a minute or two. Nothing there? Look among the unwanted mail, or check the address.',
  again: 'Use another address',
  back: 'Back to sign in',
  link: 'Forgotten your password?',
} as const;

export const resetWords = {
  title: 'A new password',
  lead: 'When you save it you are signed in here and signed out everywhere else.',
  password: 'New password',
  passwordHint: 'Ten characters or more.',
  go: 'Save and sign in',
  busy: 'Saving …',
  noLink: 'This page opens from the link in a letter. Ask for a new one if yours is too old.',
  ask: 'Ask for a new letter',
} as const;

export const invitationWords = {
  title: 'An invitation',
  offer: (academy: string, role: 'coach' | 'manager') => `${academy} invites you as a ${role}.`,
  under: (email: string) => `Your account will be under ${email}.`,
  known: 'You have an account under this address. Give its password to accept.',
  name: 'Your name',
  password: 'Choose a password',
  knownPassword: 'Your password',
  passwordHint: 'Ten characters or more.',
  go: 'Accept and sign in',
  busy: 'Accepting …',
  reading: 'Reading the invitation …',
  accepted: 'Accepted already?',
  signIn: 'Sign in',
  noLink: 'This page opens from the link in an invitation. Ask whoever invited you to send it again.',
} as const;
