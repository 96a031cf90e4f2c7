export const shellWords = {
  product: 'Ballfirst',
  tagline: 'Remote golf lessons: one cause, one drill, checked by fresh video.',
  skip: 'Skip to the content',
  account: 'Account',
  signIn: 'Sign in',
  signOut: 'Sign out',
  signOutEverywhere: 'Sign out on every device',
  changeAcademy: 'Change academy',
  mainNavigation: 'Main',
  loading: 'Loading …',
  nav: {
    home: 'Home',
    send: 'Send a swing',
    look: 'Look',
    inbox: 'Inbox',
    students: 'Students',
    faults: 'Faults',
    trials: 'Trials',
    mail: 'Messages',
    coaches: 'Coaches',
    settings: 'Settings',
  },
  notFound: {
    title: 'Nothing here',
    text: 'There is nothing for you under this address. It may have been moved, or it belongs to somebody else.',
    back: 'Go to your first page',
  },
  failed: {
    title: 'This page did not load',
    text: 'Something went wrong on our side. Nothing you sent was lost.',
    again: 'Try again',
  },
  noConnection: 'No connection. What you typed is kept on this device; try again when you have signal.',
  signInAgain: 'Sign in and come back here',
} as const;

export const welcomeWords = {
  title: 'Strike the ball before the ground.',
  lead: 'Film your usual miss with your phone. A coach finds the one cause that matters, answers with marked pictures and a drill, and sees in fresh video whether it worked.',
  steps: [
    [
      'Film it',
      'One swing, phone on a stand, at your range or in a garden. Ten balls, tapped as you hit them.',
    ],
    ['One cause, one drill', 'Your coach measures, says how sure the numbers are, and leaves out the rest.'],
    ['Check it', 'You log practice in three taps. When a step holds, you film again.'],
  ],
  signIn: 'Sign in',
  joinHint: 'New here? Your academy sends you an address of the form /join/name-of-the-academy.',
  safety: 'Stop if anything hurts. We teach golf; we do not diagnose or treat pain.',
} as const;
