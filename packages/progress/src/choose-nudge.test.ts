import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseNudge, type NudgeFacts, nudges } from './choose-nudge.ts';

const nothing: NudgeFacts = {
  onTrial: true,
  trialDaysLeft: 10,
  trialEndsOn: '2026-03-24',
  daysSinceJoining: 1,
  everSent: true,
  waitsForCoach: false,
  filmAgain: null,
  unreadReply: null,
  checkIn: null,
  programme: null,
};
const choose = (given: Partial<NudgeFacts>, sent: string[] = [], off: string[] = []) =>
  chooseNudge({ ...nothing, ...given }, new Set(sent), new Set(off));

describe('the reminder of a day', () => {
  it('is none when nothing stands still', () => {
    expect(choose({})).toBeNull();
  });

  it('is about the first swing after three days and again after a week, each once', () => {
    const waiting = { everSent: false };
    expect(choose({ ...waiting, daysSinceJoining: 2 })).toBeNull();
    expect(choose({ ...waiting, daysSinceJoining: 3 })).toEqual({ kind: 'first-swing', subject: 'day-3' });
    expect(choose({ ...waiting, daysSinceJoining: 6 }, ['first-swing day-3'])).toBeNull();
    expect(choose({ ...waiting, daysSinceJoining: 7 }, ['first-swing day-3'])).toMatchObject({
      subject: 'day-7',
    });
    expect(choose({ ...waiting, daysSinceJoining: 30 }, ['first-swing day-7'])).toBeNull();
  });

  it('puts the end of the trial before everything else, and is silent where the academy says so', () => {
    const much = {
      trialDaysLeft: 2,
      checkIn: { checkInId: 'c', days: 5 },
      unreadReply: { replyId: 'r', days: 9 },
    };
    expect(choose(much)).toEqual({ kind: 'trial-ending', subject: '2026-03-24' });
    expect(choose(much, ['trial-ending 2026-03-24'])).toEqual({ kind: 'check-in-reminder', subject: 'c' });
    expect(choose(much, ['trial-ending 2026-03-24'], ['check-in-reminder'])).toEqual({
      kind: 'reply-unread',
      subject: 'r',
    });
    expect(choose(much, [], [...nudges])).toBeNull();
  });

  it('asks for practice three days after a drill and a week after the last entry, and not while a swing waits', () => {
    const given = { programmeId: 'p', lastEntryId: null, days: 3 };
    expect(choose({ programme: given })).toEqual({ kind: 'practice', subject: 'p' });
    expect(choose({ programme: given, waitsForCoach: true })).toBeNull();
    const practised = { ...given, lastEntryId: 'e', days: 6 };
    expect(choose({ programme: practised })).toBeNull();
    expect(choose({ programme: { ...practised, days: 7 } })).toEqual({ kind: 'practice', subject: 'e' });
  });

  it('is never one that was sent or is off, whatever the facts', () => {
    const about = (name: string) =>
      fc.option(fc.record({ [name]: fc.constantFrom('a', 'b'), days: fc.nat(20) }), { nil: null });
    const facts = fc.record({
      onTrial: fc.boolean(),
      trialDaysLeft: fc.option(fc.nat(20), { nil: null }),
      trialEndsOn: fc.constant('2026-03-24'),
      daysSinceJoining: fc.nat(40),
      everSent: fc.boolean(),
      waitsForCoach: fc.boolean(),
      filmAgain: about('submissionId'),
      unreadReply: about('replyId'),
      checkIn: about('checkInId'),
      programme: fc.option(
        fc.record({
          programmeId: fc.constant('p'),
          lastEntryId: fc.option(fc.constant('e'), { nil: null }),
          days: fc.nat(20),
        }),
        { nil: null },
      ),
    }) as fc.Arbitrary<NudgeFacts>;
    fc.assert(
      fc.property(facts, fc.subarray([...nudges]), (it, off) => {
        const sent = new Set<string>();
        for (let day = 0; day < 20; day += 1) {
          const chosen = chooseNudge(it, sent, new Set(off));
          if (chosen === null) return;
          expect(off).not.toContain(chosen.kind);
          expect(sent).not.toContain(`${chosen.kind} ${chosen.subject}`);
          sent.add(`${chosen.kind} ${chosen.subject}`);
        }
        throw new Error('twenty reminders about the same facts');
      }),
    );
  });
});
