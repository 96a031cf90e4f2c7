import type { Reply } from '@ballfirst/contracts/client';

type Home = Reply<'readHome'>;

export const homeWords = {
  title: 'Home',
  nextTitle: 'Next',
  do: {
    'consent-first': 'Ask my guardian',
    'send-first': 'Send a swing',
    'put-clip-right': 'Choose another video',
    wait: null,
    'read-reply': 'Read the reply',
    practise: 'Log practice',
    'film-check-in': 'Film and send',
    'send-again': 'Send a swing',
    hold: null,
  } satisfies Record<Home['next']['kind'], string | null>,
  trialTitle: 'Your trial',
  trialDay: (day: number, days: number) => `Day ${day} of ${days}`,
  trialEnds: 'It ends',
  price: (words: string) => `Afterwards: ${words}.`,
  noCharge: 'Nothing is charged unless you join.',
  lapsed: 'Your trial has ended. Your replies stay here for you to read.',

  programmeTitle: 'Your drill',
  drillCard: 'Open the drill card',
  checkIn: { practice: 'Your coach looks at your practice', clip: 'Film again' },
  overdue: (days: number) => (days === 1 ? 'overdue since yesterday' : `${days} days overdue`),
  minutes: (minutes: number) => `${minutes} minutes a week`,
  hold: 'On hold',

  swingsTitle: 'Your swings',
  noSwings: 'Nothing sent yet. Your first swing appears here.',
  answerBy: 'Answer by',
  preparing: (percent: number) => `Being prepared, ${percent} of 100`,
  preparingLabel: 'Preparing the video',
  uploading: 'The video is still uploading. Keep the page with the upload open.',
  waiting: 'With the coaches.',
  withdrawn: 'Withdrawn.',
  answered: 'Answered.',
  filmAgain: 'Your coach asks you to film it again.',
  chooseOther: 'Choose another video',
  chooseOtherFor: (club: string) => `Choose another video for the swing with the ${club}`,
  readReply: 'Read the reply',
  correct: 'Put something right',
  correctFor: (club: string) => `Put something right: swing with the ${club}`,

  rangeTitle: 'On the range',
  look: 'Look at a swing, slowly',

  repliesTitle: 'Replies',
  noReplies: 'No reply yet.',
  unread: 'New',

  cautionsTitle: 'Before you swing',
} as const;
