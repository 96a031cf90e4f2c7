export const mailWords = {
  title: 'Messages',
  lead: 'What the service sent, newest first. Open one to read it as it went out.',
  to: 'To',
  emptyTitle: 'Nothing sent yet',
  empty: 'Letters to students, guardians and coaches appear here as they go out.',
  further: 'Older messages',
  top: 'Back to the newest',
} as const;
