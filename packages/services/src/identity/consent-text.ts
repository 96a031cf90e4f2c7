type ConsentText = { readonly version: string; readonly text: string };

/** What a guardian agrees to, each version for ever: a new text never changes what an old one said. Newest last. */
const texts: readonly [ConsentText, ...ConsentText[]] = [
  {
    version: '2026-1',
    text: [
      'I am the parent or legal guardian of this student. I agree that the academy receives videos of the student’s swing,',
      'that its coaches look at them, and that they answer with advice on practice.',
      'The videos are shown to nobody outside the academy and are not used for anything else.',
      'I will see to it that an adult supervises practice. I can withdraw this at any time by writing to the academy.',
    ].join(' '),
  },
  {
    version: '2026-2',
    text: [
      'I am the parent or legal guardian of this student. I agree that the academy receives videos of the student’s swing,',
      'that its coaches look at them, and that they answer with advice on practice.',
      'The videos are shown to nobody outside the academy and are used for nothing else, unless I agree to it below.',
      'I receive a copy of what the academy writes to the student, and I will see to it that an adult supervises practice.',
      'I can withdraw this at any time, by the link in my letter or by writing to the academy.',
    ].join(' '),
  },
];

/** The text that is shown to whoever consents now. */
export const consentText: ConsentText = texts.at(-1) ?? texts[0];

/** The text of a version; one that is not known any more reads as the newest. */
export const consentTextOf = (version: string | null): ConsentText =>
  texts.find((it) => it.version === version) ?? consentText;
