import { describe, expect, it } from 'vitest';
import { nextAction, type TrialFacts, trialStop } from './trial-stop.ts';

const now = new Date('2026-03-10T09:00:00Z');
const daysLater = (days: number): Date => new Date(now.getTime() + days * 86_400_000);
const going: TrialFacts = {
  now,
  endsAt: daysLater(8),
  firstSwingAt: daysLater(-4),
  filmAgain: false,
  waitsForUs: false,
  lastReplyAt: daysLater(-3),
  replyUnread: false,
  practisedSinceReply: true,
  held: false,
  consentMissing: false,
};
const at = (given: Partial<TrialFacts>) => {
  const facts = { ...going, ...given };
  const stop = trialStop(facts);
  return { stop, action: nextAction(stop, facts) };
};

describe('where a trial stands still', () => {
  it('is the first step that has not been made', () => {
    expect(at({}).stop).toBe('moving');
    expect(at({ firstSwingAt: null, lastReplyAt: null, practisedSinceReply: false }).stop).toBe(
      'no-first-swing',
    );
    expect(at({ waitsForUs: true, replyUnread: true }).stop).toBe('waits-for-us');
    expect(at({ replyUnread: true, practisedSinceReply: false }).stop).toBe('reply-unread');
    expect(at({ practisedSinceReply: false, endsAt: daysLater(1) }).stop).toBe('no-practice');
    expect(at({ endsAt: daysLater(3) }).stop).toBe('ending');
    expect(at({ endsAt: daysLater(3.1) }).stop).toBe('moving');
  });

  it('presses nobody about a drill of the last three days', () => {
    const fresh = { practisedSinceReply: false, lastReplyAt: daysLater(-2.9) };
    expect(at(fresh).stop).toBe('moving');
    expect(at(fresh).action).toMatch(/less than three days ago/);
    expect(at(fresh).action).not.toMatch(/practice is logged/);
    expect(at({ ...fresh, endsAt: daysLater(1) }).stop).toBe('ending');
    expect(at({ ...fresh, lastReplyAt: daysLater(-3) }).stop).toBe('no-practice');
  });

  it('is the filming while the first video cannot be used', () => {
    const { stop, action } = at({ filmAgain: true, lastReplyAt: null, practisedSinceReply: false });
    expect(stop).toBe('no-first-swing');
    expect(action).toMatch(/video cannot be used/);
    expect(at({ filmAgain: true }).action).toMatch(/video cannot be used/);
  });

  it('asks nobody with a pain to practise', () => {
    for (const given of [{ practisedSinceReply: false }, {}, { endsAt: daysLater(1) }]) {
      const { stop, action } = at({ ...given, held: true, filmAgain: true });
      expect(stop).toBe('held');
      expect(action).toMatch(/pain/);
      expect(action).toMatch(/clinician/);
    }
    expect(at({ held: true, waitsForUs: true }).action).toMatch(/Answer the swing/);
  });

  it('is the consent of the guardian while a junior may send nothing', () => {
    const first = { firstSwingAt: null, lastReplyAt: null, practisedSinceReply: false };
    expect(at({ ...first, consentMissing: true }).action).toMatch(/guardian/);
    expect(at({ ...first, consentMissing: true }).action).not.toMatch(/filming/);
    expect(at({ filmAgain: true, consentMissing: true }).action).toMatch(/guardian/);
    expect(at({ waitsForUs: true, consentMissing: true }).action).toMatch(/Answer the swing/);
  });

  it('has words for every stop', () => {
    for (const given of [{}, { waitsForUs: true }, { replyUnread: true }, { endsAt: now }]) {
      expect(at(given).action).not.toBe('');
    }
  });
});
