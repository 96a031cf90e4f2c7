import { causes } from '@ballfirst/library/causes';
import { juniorsSentence, keepClearSentence, painSentence } from '@ballfirst/library/cautions';
import { drills } from '@ballfirst/library/drills';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { describe, expect, it } from 'vitest';
import { checkInDueLetter } from './check-in-due.ts';
import { clipRefusedLetter } from './clip-refused.ts';
import type { Composed } from './compose.ts';
import { filmAgainLetter } from './film-again.ts';
import { guardianCopy } from './guardian-copy.ts';
import { nowPaidLetter } from './now-paid.ts';
import { painHeldLetter } from './pain-held.ts';
import { replySentLetter } from './reply-sent.ts';
import { trialEndedLetter } from './trial-ended.ts';
import { welcomeLetter } from './welcome.ts';

const of = { name: 'Ada <b>', academyName: 'Ash & Oak', publicUrl: 'https://lessons.example.test' };
const id = '0190a6a0-0000-7000-8000-000000000001';
const hands = ['right', 'left'] as const;

/** Every letter that asks for a swing or for practice, for both hands and all drills and causes. */
const askingToSwing: readonly Composed[] = [
  ...(['joining', 'first-swing'] as const).map((trialStarts) =>
    welcomeLetter({ ...of, trialDays: 14, trialStarts, promiseHours: 24, safeguardContact: 'Mo, 555' }),
  ),
  filmAgainLetter({ ...of, submissionId: id, reason: 'Too dark.' }),
  clipRefusedLetter({ ...of, submissionId: null, reason: 'No picture.' }),
  clipRefusedLetter({ ...of, submissionId: id, reason: 'No picture.' }),
  nowPaidLetter({ ...of, promiseHours: 24 }),
  ...hands.flatMap((hand) => [
    replySentLetter({ ...of, coachName: 'Reed', replyId: id, hand, sentence: null, drill: null }),
    ...causes.map((cause) =>
      replySentLetter({
        ...of,
        coachName: 'Reed',
        replyId: id,
        hand,
        sentence: wordsForHand(cause.forStudent, hand),
        drill: null,
      }),
    ),
    ...drills.flatMap((drill) => [
      replySentLetter({ ...of, coachName: 'Reed', replyId: id, hand, sentence: null, drill }),
      ...(['practice', 'clip'] as const).map((asks) =>
        checkInDueLetter({ ...of, checkInId: id, asks, drill, hand }),
      ),
    ]),
  ]),
];
const others: readonly Composed[] = [
  trialEndedLetter({ ...of, priceWords: '40 a month' }),
  painHeldLetter({
    ...of,
    studentName: 'Bo',
    held: true,
    page: { does: 'Open the swing', url: `${of.publicUrl}/review/${id}` },
  }),
];
const all = [...askingToSwing, ...others];
/** What a letter says, without its safety sentences. */
const speaksOfSwinging = /\b(film|swing|drill|practise|practice)\b/i;

describe('letters', () => {
  it('that ask for a swing or practice carry the cautions, in text and HTML', () => {
    for (const { text, html } of askingToSwing) {
      for (const caution of [painSentence, keepClearSentence, juniorsSentence]) {
        expect(text).toContain(caution);
        expect(html).toContain(caution.replaceAll("'", '&#39;'));
      }
    }
  });

  it('to students without cautions do not speak of swinging', () => {
    expect(trialEndedLetter({ ...of, priceWords: '40 a month' }).text).not.toMatch(speaksOfSwinging);
  });

  it('carry the cautions of the drill itself', () => {
    for (const drill of drills) {
      const { text } = checkInDueLetter({ ...of, checkInId: id, asks: 'clip', drill, hand: 'left' });
      for (const caution of drill.cautions) expect(text).toContain(wordsForHand(caution, 'left'));
    }
  });

  it('say left and right, never lead and trail, and leave no gap unfilled', () => {
    for (const { subject, text, html } of all) {
      for (const words of [subject, text, html])
        expect(words).not.toMatch(/\b(lead|trail)\b|[{}]|undefined/i);
    }
  });

  it('escape what people typed, and load nothing from anywhere', () => {
    for (const { html } of all) {
      expect(html).not.toContain('<b>');
      expect(html).toContain('Ada &lt;b&gt;');
      expect(html).toContain('Ash &amp; Oak');
      expect(html).not.toMatch(/<(img|script|link|style|iframe)|src=/i);
    }
  });

  it('write out the address of the page, on our own site only', () => {
    for (const { text, html } of all) {
      const urls = [...text.matchAll(/https?:\/\/\S+/g)].map(([url]) => url);
      expect(urls).toHaveLength(1);
      expect(urls[0]).toMatch(/^https:\/\/lessons\.example\.test\//);
      expect(html).toContain(`>${urls[0]}</a>`);
    }
  });

  it('keep a subject on one line whatever a name holds', () => {
    const letter = replySentLetter({
      ...of,
      coachName: 'Reed\r\nBcc: all@example.test',
      replyId: id,
      hand: 'right',
      sentence: null,
      drill: null,
    });
    expect(letter.subject).not.toMatch(/[\r\n]/);
  });

  it('keep their cautions in the copy for the guardian', () => {
    const [letter] = askingToSwing;
    if (letter === undefined) throw new Error('no letter');
    const copy = guardianCopy(letter, { guardianName: 'Cy <i>', studentName: 'Ada $&' });
    expect(copy.text).toContain(painSentence);
    expect(copy.html).toContain('Cy &lt;i&gt;');
    expect(copy.html).toContain('what we wrote to Ada $&amp;,');
  });
});
