/** What a guardian agrees to. The version is stored with the consent: a new text never changes an old one. */
export const consentText = {
  version: '2026-1',
  text: [
    'I am the parent or legal guardian of this student. I agree that the academy receives videos of the student’s swing,',
    'that its coaches look at them, and that they answer with advice on practice.',
    'The videos are shown to nobody outside the academy and are not used for anything else.',
    'I will see to it that an adult supervises practice. I can withdraw this at any time by writing to the academy.',
  ].join(' '),
} as const;
