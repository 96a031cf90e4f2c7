export const nudges = [
  'trial-ending',
  'check-in-reminder',
  'film-again',
  'reply-unread',
  'first-swing',
  'practice',
] as const;
/** A reminder to a student, in the order in which one is chosen when several would fit. */
export type Nudge = (typeof nudges)[number];

/** What a reminder looks at. Days are whole local days since that day, today's being 0; null: it has not happened. */
export type NudgeFacts = {
  readonly onTrial: boolean;
  /** Local days to the day on which the trial ends, that day's being 0. */
  readonly trialDaysLeft: number | null;
  /** That day, 'YYYY-MM-DD': a second trial has an end of its own. */
  readonly trialEndsOn: string | null;
  readonly daysSinceJoining: number;
  readonly everSent: boolean;
  /** A swing waits for a coach: nothing more is asked of the student meanwhile. */
  readonly waitsForCoach: boolean;
  readonly filmAgain: { readonly submissionId: string; readonly days: number } | null;
  readonly unreadReply: { readonly replyId: string; readonly days: number } | null;
  /** An open check-in that was asked for. */
  readonly checkIn: { readonly checkInId: string; readonly days: number } | null;
  /** The open programme: days since it was given, or since it was last practised. */
  readonly programme: {
    readonly programmeId: string;
    readonly lastEntryId: string | null;
    readonly days: number;
  } | null;
};

export type ChosenNudge = {
  readonly kind: Nudge;
  /** What it is about: the same reminder about the same thing is sent once. */
  readonly subject: string;
};

/** Days after which each reminder comes. Common practice, no source. */
export const nudgeAfterDays = {
  'trial-ending': 3,
  'check-in-reminder': 3,
  'film-again': 2,
  'reply-unread': 2,
  'first-swing': [3, 7],
  practice: { first: 3, next: 7 },
} as const;

/**
 * The one reminder that fits today, or none. A student whose practice is held because of pain is asked for nothing, and
 * one whose swing waits for a coach is not pressed.
 *
 * @param sent - what was sent before, by `kind subject`
 * @param off - reminders the academy has switched off
 */
export const chooseNudge = (
  facts: NudgeFacts,
  sent: ReadonlySet<string>,
  off: ReadonlySet<string>,
): ChosenNudge | null => {
  const fits = fitting(facts);
  return (
    nudges
      .flatMap((kind) => (fits[kind] === null ? [] : [{ kind, subject: fits[kind] }]))
      .find(({ kind, subject }) => !off.has(kind) && !sent.has(`${kind} ${subject}`)) ?? null
  );
};

const fitting = (facts: NudgeFacts): Readonly<Record<Nudge, string | null>> => {
  const { checkIn, filmAgain, unreadReply, programme, trialDaysLeft } = facts;
  const after = nudgeAfterDays;
  const ending = facts.onTrial && facts.everSent && trialDaysLeft !== null;
  const idle = facts.waitsForCoach ? null : programme;
  const practiceAfter = programme?.lastEntryId == null ? after.practice.first : after.practice.next;
  return {
    'trial-ending': ending && trialDaysLeft <= after['trial-ending'] ? facts.trialEndsOn : null,
    'check-in-reminder':
      checkIn !== null && checkIn.days >= after['check-in-reminder'] ? checkIn.checkInId : null,
    'film-again': filmAgain !== null && filmAgain.days >= after['film-again'] ? filmAgain.submissionId : null,
    'reply-unread':
      unreadReply !== null && unreadReply.days >= after['reply-unread'] ? unreadReply.replyId : null,
    'first-swing': facts.everSent || !facts.onTrial ? null : firstSwingSubject(facts.daysSinceJoining),
    practice:
      idle !== null && unreadReply === null && checkIn === null && idle.days >= practiceAfter
        ? (idle.lastEntryId ?? idle.programmeId)
        : null,
  };
};

/** Twice: after three days and after a week; whoever is away longer has had both in turn. */
const firstSwingSubject = (days: number): string | null => {
  const passed = nudgeAfterDays['first-swing'].filter((day) => days >= day);
  return passed.length === 0 ? null : `day-${passed.at(-1)}`;
};
