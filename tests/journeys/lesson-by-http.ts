import { readFile } from 'node:fs/promises';
import { vi } from 'vitest';
import { clipFile, clipTruth } from './kept-swing.ts';
import { letters, subjectOf } from './letters.ts';
import { type Caller, callerAt } from './person-at-the-door.ts';
import { type DemoFile, moveClock } from './service.ts';

type Submission = { id: string; status: string; clips: { id: string; status: string }[]; version: number };
type Home = {
  next: { kind: string };
  standing: string;
  programme: {
    id: string;
    rung: string;
    status: string;
    entries: { clean: number; verdict: string }[];
    drill: { ladder: { id: string; balls: number }[] };
    nextCheckIn: { id: string; asks: string; dueAt: string } | null;
  } | null;
  latest: Submission[];
  replies: { id: string; readAt: string | null }[];
  weeks: { entries: number; balls: number; clean: number }[];
};
type Student = { id: string; flags: string[]; weeks: { swings: number; tallyBalls: number }[] };

const dayMs = 86_400_000;
const patience = { timeout: 150_000, interval: 250 };
const tally = {
  balls: 10,
  solid: 3,
  fat: 6,
  thin: 1,
  topped: 0,
  heel: 0,
  toe: 0,
  shank: 0,
  sky: 0,
  counted: true,
};
const told = { startLine: 'straight', curve: 'none', typical: 'usual', note: '', pain: 'none', painNote: '' };

/** Each leg of a lesson ends when its effects can be seen; the next begins. */
export type Leg = { readonly name: string; readonly run: () => Promise<void> };

/** A lesson in legs from joining to the answered check-in, and what it leaves behind. */
export const lessonByHttp = (service: { url: string; home: string; demo: DemoFile }, name: string) => {
  const { url, home, demo } = service;
  const academy = demo.academies[0];
  const staff = academy?.people.find(({ role }) => role === 'coach');
  const manager = academy?.people.find(({ role }) => role === 'manager');
  if (!academy || !staff || !manager) throw new Error('The demo academy has no coach or no manager.');
  const email = `${name.toLowerCase().replaceAll(' ', '-')}@students.example`;
  const [student, coach, office]: Caller[] = [callerAt(url), callerAt(url), callerAt(url)];
  if (!student || !coach || !office) throw new Error('Nobody calls.');
  let submissionId = '';
  let isOfficeOpen = false;
  const readHome = () => student.ask<Home>('GET', '/api/home');
  const readSwing = () => student.ask<Submission>('GET', `/api/submissions/${submissionId}`);
  const until = async (what: string, isSo: () => Promise<boolean>) =>
    vi.waitFor(async () => {
      if (!(await isSo())) throw new Error(`${name}: ${what} has not come.`);
    }, patience);
  const mine = async () => (await letters(home)).filter((it) => it.includes(email)).map(subjectOf);

  const sendSwing = async (clip: string, checkInId: string | null) => {
    const facts = { filename: `${clip}.mp4`, view: 'face-on', swingLength: 'full' };
    const clipId = await student.upload(await readFile(clipFile(clip)), facts);
    const body = { clipIds: [clipId], club: '8-iron', lie: 'mat', tally, ...told, checkInId };
    submissionId = (await student.ask<Submission>('POST', '/api/submissions', { body })).id;
    await until('a prepared clip', async () => (await readSwing()).status === 'waiting');
  };
  const answer = async () => {
    const truth = clipTruth('hang-back');
    const claimed = await coach.ask<Submission>('POST', `/api/submissions/${submissionId}/claim`);
    const clipId = claimed.clips[0]?.id ?? '';
    const marks = Object.entries(truth.points).flatMap(([position, points]) =>
      ['hip-middle', 'head-centre', 'lead-ankle', 'trail-ankle'].flatMap((point) => {
        const [x, y] = points[point] ?? [];
        const frame = truth.positions[position];
        if (x === undefined || y === undefined || frame === undefined) return [];
        return [{ position, point, frame, x, y, source: 'coach' }];
      }),
    );
    const at = `/api/submissions/${submissionId}`;
    await coach.ask('PUT', `${at}/clips/${clipId}/marks`, { body: { marks, observations: [] }, version: 0 });
    await coach.ask('POST', `${at}/diagnosis`, {
      body: { fault: 'fat', cause: 'hang-back', setUpTicks: [] },
    });
    const plan = {
      drillId: 'flat-towel',
      place: 'mat',
      exaggeration: 'firm',
      weeklyMinutes: 60,
      firstCheckInDays: 7,
    };
    const words = 'Your weight stays behind the ball. Let it go forward, and the ground comes after.';
    const body = { words, cause: 'hang-back', setUpTicks: [], frames: [], plan };
    await coach.ask('PUT', `${at}/reply`, { body, version: 0 });
    await coach.ask('POST', `${at}/reply/send`);
  };

  const legs: Leg[] = [
    {
      name: 'joining',
      run: async () => {
        const join = { name, email, password: 'a long enough word', hand: 'right', ageGroup: 'adult' };
        const body = { ...join, zone: 'Europe/London', guardian: null };
        await student.ask('POST', `/api/join/${academy.slug}`, { body });
        await until('the welcome', async () => (await mine()).length > 0);
      },
    },
    { name: 'the first swing', run: () => sendSwing('hang-back', null) },
    {
      name: 'the reply',
      run: async () => {
        await coach.ask('POST', '/api/sign-in', { body: { email: staff.email, password: staff.password } });
        await answer();
        await moveClock(home, 60_000);
        await until('the reply', async () => (await readHome()).replies.length > 0);
        const [reply] = (await readHome()).replies;
        await student.ask('POST', `/api/replies/${reply?.id}/read`);
        await until('its letter', async () =>
          (await mine()).some((subject) => /reply|answer/i.test(subject)),
        );
      },
    },
    {
      name: 'practice',
      run: async () => {
        for (const clean of [10, 2]) {
          const { programme } = await readHome();
          const rung = programme?.drill.ladder.find(({ id }) => id === programme.rung);
          const balls = rung?.balls ?? 10;
          const body = {
            rung: programme?.rung,
            balls,
            clean: Math.min(clean, balls),
            filmed: false,
            pain: 'none',
          };
          await student.ask('POST', `/api/programmes/${programme?.id}/practice`, { body });
        }
      },
    },
    {
      name: 'the check-in',
      run: async () => {
        await moveClock(home, 8 * dayMs);
        await until('its letter', async () => (await mine()).some((subject) => /film/i.test(subject)));
        const { programme } = await readHome();
        await sendSwing('sound', programme?.nextCheckIn?.id ?? null);
      },
    },
  ];

  /** All that can be seen of it, without names, ids and instants. */
  const endState = async () => {
    if (!isOfficeOpen)
      await office.ask('POST', '/api/sign-in', {
        body: { email: manager.email, password: manager.password },
      });
    isOfficeOpen = true;
    const { student: me } = await student.ask<{ student: { id: string } }>('GET', '/api/me');
    const seen = await readHome();
    const row = await office.ask<Student>('GET', `/api/students/${me.id}`);
    const { programme } = seen;
    return {
      next: seen.next.kind,
      standing: seen.standing,
      swings: seen.latest.map(({ status, clips }) => [status, clips.map((clip) => clip.status)]),
      replies: seen.replies.map(({ readAt }) => readAt !== null),
      programme: programme && [programme.rung, programme.status],
      checkIn: programme?.nextCheckIn?.asks ?? null,
      entries: programme?.entries.map(({ clean, verdict }) => [clean, verdict]),
      practised: seen.weeks.reduce((sum, it) => sum + it.entries, 0),
      sent: row.weeks.reduce((sum, it) => sum + it.swings, 0),
      flags: row.flags,
      letters: (await mine()).toSorted(),
    };
  };
  return { legs, endState };
};
