import { addWorkingHours } from '@ballfirst/calendar/add-working-hours';
import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import type { Tally } from '@ballfirst/contracts/words';
import { workingHoursOf } from '@ballfirst/services/academy/working-hours-of';
import type { AcademyLine } from './academies.ts';
import { sharesOver } from './course.ts';
import { type Draw, drawOf } from './draw.ts';
import { noteOf } from './notes.ts';
import { type SentSteps, sentInBlock, sentSteps } from './sent-in-block.ts';
import { hourOf, joinedAtOf, standingAt } from './story-times.ts';
import type { FilmAgainReason, Lesson, SecondDrill, Standing, StudentLine, Waiting } from './student-line.ts';
import { badDay, tallyOf, tenBalls } from './ten-balls.ts';

export type Answer = {
  readonly coach: string;
  readonly at: Date;
  readonly cause: string;
  readonly fault: Lesson['miss'];
  readonly course: Lesson['course'];
  /** Which reply of the lesson it is, from 0. */
  readonly number: number;
  readonly readAt: Date | null;
  readonly place: 'mat' | 'grass';
  /** Instants of practice. */
  readonly practice: readonly Date[];
  readonly skill: readonly [first: number, gain: number];
  readonly second?: SecondDrill;
  readonly endsInPain?: 'new' | 'worse';
  readonly asks?: {
    readonly at: Date;
    readonly words: string;
    readonly answer?: { readonly at: Date; readonly words: string };
  };
  readonly painHeardAt?: Date;
  readonly stuckAt?: Date;
  readonly joinAskedAt?: Date;
  /** What happens after the reply is told up to here. */
  readonly until: Date;
};

/** One swing and what came of it: a chapter that is told in one go. */
export type SwingStory = Pick<
  Waiting,
  'clips' | 'club' | 'lie' | 'note' | 'pain' | 'claimedBy' | 'refused' | 'grip'
> & {
  readonly mark: string;
  readonly sentAt: Date;
  readonly standing: Standing;
  readonly tally: Tally;
  readonly startLine: 'left' | 'straight' | 'right';
  readonly curve: 'left' | 'none' | 'right';
  readonly answered?: Answer;
  readonly filmAgain?: { readonly coach: string; readonly at: Date; readonly reason: FilmAgainReason };
  readonly painSeen?: { readonly coach: string; readonly at: Date };
  readonly marked?: { readonly coach: string; readonly at: Date };
  readonly model?: NonNullable<Lesson['model']>;
  readonly isBlindTurn: boolean;
};

/** One swing in five, as in life, but always the same ones. */
const turnsBlind = (academy: AcademyLine, line: StudentLine, number: number): boolean =>
  drawOf(`turn ${academy.slug} ${line.key} ${number}`).next() < 0.2;

/** A student's swings, oldest first. The same student, academy and instant give the same story. */
export const storyOf = (
  academy: AcademyLine,
  line: StudentLine,
  now: Date,
  sent = sentSteps(academy, now),
): SwingStory[] => {
  const draw = drawOf(`${academy.slug} ${line.key}`);
  return [
    ...(line.lesson ? lessonOf(draw, academy, line, line.lesson, now) : []),
    ...(line.waiting ? [waitingOf(draw, academy, line, line.waiting, { sent, now })] : []),
  ];
};

const waitingOf = (
  draw: Draw,
  academy: AcademyLine,
  line: StudentLine,
  waiting: Waiting,
  { sent, now }: { readonly sent: SentSteps; readonly now: Date },
): SwingStory => {
  const joinedAt = joinedAtOf(academy, line, now);
  const { when, misses, counted, filmAgain, painSeen, marked, startLine, curve, isBlindTurn, ...told } =
    waiting;
  const sentAt =
    'block' in when
      ? sentInBlock(draw, academy.zone, { block: when.block, sent, joinedAt, now })
      : hourOf(draw, academy.zone, new Date(now.getTime() - when.daysAgo * 86_400_000), [14, 17]);
  const working = workingHoursOf(academy);
  return {
    ...told,
    mark: 'waiting',
    isBlindTurn: isBlindTurn ?? false,
    sentAt,
    standing: standingAt(academy, line, sentAt, now),
    tally: tallyOf(misses, counted ?? true),
    startLine: startLine ?? 'straight',
    curve: curve ?? 'none',
    ...(filmAgain
      ? {
          filmAgain: {
            coach: filmAgain.coach,
            reason: filmAgain.reason,
            at: addWorkingHours(sentAt, filmAgain.afterHours, working),
          },
        }
      : {}),
    ...(painSeen
      ? { painSeen: { coach: painSeen.coach, at: soonAfter(sentAt, painSeen.afterHours, now) } }
      : {}),
    ...(marked ? { marked: { coach: marked.coach, at: soonAfter(sentAt, marked.afterHours, now) } } : {}),
  };
};

/** So many hours later, or half-way to now where that is still to come. */
const soonAfter = (at: Date, hours: number, now: Date): Date =>
  new Date(Math.min(at.getTime() + hours * 3_600_000, (at.getTime() + now.getTime()) / 2));

const lessonOf = (
  draw: Draw,
  academy: AcademyLine,
  line: StudentLine,
  lesson: Lesson,
  now: Date,
): SwingStory[] => {
  const { miss, course, daysAgo } = lesson;
  const shares = sharesOver(draw, { miss, course, swings: daysAgo.length });
  const joinedAt = joinedAtOf(academy, line, now);
  const sent = daysAgo.map((days) => {
    const at = hourOf(draw, academy.zone, new Date(now.getTime() - days * 86_400_000), [9, 19]);
    return new Date(Math.max(at.getTime(), joinedAt.getTime() + 3_600_000));
  });
  return daysAgo.map((_, number) => {
    const sentAt = sent[number] ?? now;
    const share = shares[number] ?? {};
    return {
      mark: `lesson-${number + 1}`,
      isBlindTurn: turnsBlind(academy, line, number),
      clips: [lesson.clips[number] ?? 'sound'],
      club: lesson.club,
      lie: lesson.lie,
      note: noteOf(draw, { miss, course, number }),
      sentAt,
      standing: standingAt(academy, line, sentAt, now),
      tally: number === 0 ? badDay(draw, share, miss) : tenBalls(draw, share),
      startLine: 'straight' as const,
      curve: 'none' as const,
      answered: answerOf(draw, academy, lesson, { number, sentAt, next: sent[number + 1] ?? null, now }),
      ...(lesson.model && number === daysAgo.length - 1 ? { model: lesson.model } : {}),
    };
  });
};

const answerOf = (
  draw: Draw,
  academy: AcademyLine,
  lesson: Lesson,
  swing: { readonly number: number; readonly sentAt: Date; readonly next: Date | null; readonly now: Date },
): Answer => {
  const { number, sentAt, next, now } = swing;
  const hours = lesson.replyHours?.[number] ?? draw.between(2, academy.promiseHours * 0.8);
  const replied = addWorkingHours(sentAt, hours, workingHoursOf(academy));
  const at = replied < now ? replied : new Date((sentAt.getTime() + now.getTime()) / 2);
  const isLast = next === null;
  const until = next ?? now;
  const read = new Date(at.getTime() + (lesson.readAfterHours ?? draw.between(0.3, 20)) * 3_600_000);
  const isUnread = (isLast && lesson.lastUnread === true) || read >= until;
  const practice = isUnread ? [] : practiceDays(draw, academy.zone, lesson, read, until);
  const kept = isLast ? practice.slice(0, lesson.entriesAtMost) : practice;
  const { cause, miss: fault, course, coach, skill } = lesson;
  return {
    ...{ coach, at, cause, fault, course, number, until, skill },
    readAt: isUnread ? null : read,
    place: lesson.lie === 'mat' ? 'mat' : 'grass',
    practice:
      isLast && lesson.entriesAtMost !== undefined ? practice.slice(0, lesson.entriesAtMost) : practice,
    ...(isLast ? afterLast(academy, lesson, read, now) : {}),
    ...(isLast && lesson.isPainHeard ? { painHeardAt: heardAt(academy, until, kept) } : {}),
  };
};

/** When a coach had spoken about the pain of the last practice: two working hours later. */
const heardAt = (academy: AcademyLine, until: Date, practice: readonly Date[]): Date =>
  addWorkingHours(practice.at(-1) ?? until, 2, workingHoursOf(academy));

/** What only the newest reply of a lesson brings. */
const afterLast = (
  academy: AcademyLine,
  { endsInPain, asks, stuckDaysAgo, joinAskedDaysAgo, second }: Lesson,
  read: Date,
  now: Date,
): Pick<Answer, 'endsInPain' | 'asks' | 'stuckAt' | 'joinAskedAt' | 'second'> => {
  const ago = (days: number): Date => new Date(now.getTime() - days * 86_400_000);
  const askedAt = new Date(read.getTime() + 40 * 60_000);
  const answeredAt = addWorkingHours(askedAt, 4, workingHoursOf(academy));
  const answer = asks?.answer === undefined ? {} : { answer: { at: answeredAt, words: asks.answer } };
  return {
    ...(endsInPain ? { endsInPain } : {}),
    ...(second ? { second } : {}),
    ...(asks ? { asks: { at: askedAt, words: asks.words, ...answer } } : {}),
    ...(stuckDaysAgo === undefined ? {} : { stuckAt: ago(stuckDaysAgo) }),
    ...(joinAskedDaysAgo === undefined ? {} : { joinAskedAt: ago(joinAskedDaysAgo) }),
  };
};

/** Practice in the late afternoon, so many days a week, with a day now and then that falls out. */
const practiceDays = (draw: Draw, zone: string, lesson: Lesson, from: Date, until: Date): Date[] => {
  if (lesson.sessions === 0) return [];
  const days: Date[] = [];
  const first = localDate(from, zone);
  for (let day = 0; day < 90; day += 1) {
    if (draw.next() >= (lesson.sessions / 7) * (day > 21 ? 0.4 : 0.9)) continue;
    const minutes = Math.floor(draw.between(0, 59));
    const localTime = `${16 + Math.floor(draw.between(0, 4))}:${String(minutes).padStart(2, '0')}`;
    const at = localDueInstant({ zone, localDate: addDays(first, day), localTime });
    if (at > from && at < until) days.push(at);
  }
  return days;
};
