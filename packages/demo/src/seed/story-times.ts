import { localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import { localMidnightEnd } from '@ballfirst/calendar/local-midnight-end';
import type { AcademyLine } from './academies.ts';
import { type Draw, drawOf } from './draw.ts';
import type { Standing, StudentLine } from './student-line.ts';

const dayMs = 86_400_000;
const two = (of: number): string => String(Math.floor(of)).padStart(2, '0');

/** The same local day at an hour drawn between two; never later than the instant itself when that is today. */
export const hourOf = (
  draw: Draw,
  zone: string,
  at: Date,
  [from, to]: readonly [from: number, to: number],
): Date => {
  const localTime = `${two(draw.between(from, to))}:${two(draw.between(0, 60))}`;
  const drawn = localDueInstant({ zone, localDate: localDate(at, zone), localTime });
  return drawn < at ? drawn : at;
};

/** When a student joined: newcomers to the minute, others at an hour of that day. */
export const joinedAtOf = (academy: AcademyLine, line: StudentLine, now: Date): Date => {
  const at = new Date(now.getTime() - line.joinedDaysAgo * dayMs);
  if (line.joinedDaysAgo < 2) return at;
  return hourOf(drawOf(`joined ${academy.slug} ${line.key}`), academy.zone, at, [7, 12]);
};

/** When the manager did what the line says: in the forenoon of that day. */
export const turnAtOf = (academy: AcademyLine, line: StudentLine, turn: number, now: Date): Date => {
  const daysAgo = line.turns?.[turn]?.daysAgo ?? 0;
  const at = new Date(now.getTime() - daysAgo * dayMs);
  return hourOf(drawOf(`turn ${academy.slug} ${line.key} ${turn}`), academy.zone, at, [9, 12]);
};

/** A trial's last midnight where it begins with joining. */
export const trialEndOf = (academy: AcademyLine, line: StudentLine, now: Date): Date =>
  localMidnightEnd({
    startedAt: joinedAtOf(academy, line, now),
    days: academy.trialDays,
    zone: line.zone ?? academy.zone,
  });

/** How the student stood at an instant. */
export const standingAt = (academy: AcademyLine, line: StudentLine, at: Date, now: Date): Standing => {
  const turns = line.turns ?? [];
  const last = turns.findLast((_, index) => turnAtOf(academy, line, index, now) <= at);
  if (last) return last.to;
  if (line.isInvited) return 'invited';
  return line.trialEnds && trialEndOf(academy, line, now) <= at ? 'lapsed' : 'trial';
};
