import type { Block } from '@ballfirst/contracts/http/inbox';
import type { Input } from '@ballfirst/services/operation-types';
import type { z } from 'zod';
import type { Course } from './course.ts';
import type { Miss } from './ten-balls.ts';

export type FilmAgainReason = Input<'askToFilmAgain'>['reason'];
export type Standing = 'invited' | 'trial' | 'lapsed' | 'paid' | 'paused' | 'left';

/** One turn in a student's standing. */
export type Turn = { readonly daysAgo: number; readonly to: Standing; readonly reason: string };

/** How a swing was taken: from where it stands in the inbox now, or so many days ago. */
export type When = { readonly block: z.output<typeof Block> } | { readonly daysAgo: number };

/** A swing that nobody has answered yet. */
export type Waiting = {
  readonly when: When;
  /** Clips by preference: the first one that is kept is taken. */
  readonly clips: readonly string[];
  readonly club: Club;
  readonly lie: Lie;
  readonly misses: Partial<Record<Miss, number>>;
  readonly counted?: boolean;
  readonly startLine?: 'left' | 'straight' | 'right';
  readonly curve?: 'left' | 'none' | 'right';
  readonly note: string;
  readonly pain?: { readonly kind: 'new' | 'worse'; readonly note: string };
  /** A drawn photo of the grip that goes with it. */
  readonly grip?: 'square' | 'turned-to-target';
  /** Who has read the pain report, and how long after it came. */
  readonly painSeen?: { readonly coach: string; readonly afterHours: number };
  /** A coach who began to mark it, so long after it came, and gave it back. */
  readonly marked?: { readonly coach: string; readonly afterHours: number };
  /** The coach who has it just now. */
  readonly claimedBy?: string;
  /** Its order of causes is held back until the coach has named one. */
  readonly isBlindTurn?: true;
  /** The video was refused by the machine, by the code of its reason. */
  readonly refused?: string;
  /** A coach asked for a better video. */
  readonly filmAgain?: {
    readonly coach: string;
    readonly afterHours: number;
    readonly reason: FilmAgainReason;
  };
};

/** A drill beside the first, and how the days of both are planned. */
export type SecondDrill = {
  readonly drillId: string;
  readonly daysPerWeek: number;
  /** A day, of the first drill and of this one. */
  readonly minutes: readonly [first: number, second: number];
};

/** Swings that were answered, one after another, about one cause. */
export type Lesson = {
  readonly cause: string;
  readonly miss: Miss;
  readonly course: Course;
  readonly coach: string;
  /** One clip for each swing, oldest first. */
  readonly clips: readonly string[];
  /** When each was sent. */
  readonly daysAgo: readonly number[];
  readonly club: Club;
  readonly lie: Lie;
  /** Practice days a week; none where it is 0. */
  readonly sessions: number;
  /** Share of clean balls at the first session, and what each session adds. */
  readonly skill: readonly [first: number, gain: number];
  /** The last programme has a drill beside the first, practised after it on the same days. */
  readonly second?: SecondDrill;
  /** The last reply has not been opened. */
  readonly lastUnread?: boolean;
  /** The last practice entry tells of a pain. */
  readonly endsInPain?: 'new' | 'worse';
  /** A coach has spoken with the student about that pain. */
  readonly isPainHeard?: true;
  /** What the student asks back about the last reply, and what the coach answers, if there is an answer yet. */
  readonly asks?: { readonly words: string; readonly answer?: string };
  /** So many days ago the step of the last programme came before the coaches, if it was not passed by then. */
  readonly stuckDaysAgo?: number;
  /** The student has said, so many days ago, that they would like to join. */
  readonly joinAskedDaysAgo?: number;
  /** No practice after so many entries on the last programme. */
  readonly entriesAtMost?: number;
  /** Hours after which the replies were read; drawn where it is missing. */
  readonly readAfterHours?: number;
  /** The last swing was kept in the academy's collection, as its player allowed. */
  readonly model?: { readonly name: string; readonly by: string; readonly permission: string };
  /** Working hours until the reply, oldest first; missing ones are drawn. */
  readonly replyHours?: readonly number[];
};

export type Club = '6-iron' | '7-iron' | '8-iron' | '9-iron' | 'wedge' | 'driver';
export type Lie = 'mat' | 'fairway' | 'tee' | 'rough';

export type StudentLine = {
  readonly key: string;
  readonly name: string;
  readonly hand: 'right' | 'left';
  readonly ageGroup: 'adult' | 'junior' | 'senior';
  readonly joinedDaysAgo: number;
  /** Where the student's own clock is not the academy's. */
  readonly zone?: string;
  /** Of juniors: who consents, or has only been asked. */
  readonly guardian?: { readonly name: string; readonly relation: string; readonly hasConsented?: false };
  /** Asked to come by the academy, and not there yet. */
  readonly isInvited?: boolean;
  /** The trial ran to its last midnight and nobody joined. */
  readonly trialEnds?: boolean;
  /** What the manager did, oldest first. */
  readonly turns?: readonly Turn[];
  readonly lesson?: Lesson;
  readonly waiting?: Waiting;
};
