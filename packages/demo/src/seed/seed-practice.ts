import { drillById } from '@ballfirst/library/drills';
import { sendDueCheckIn } from '@ballfirst/services/follow-ups/send-due-check-in';
import type { Reply } from '@ballfirst/services/operation-types';
import { logPractice } from '@ballfirst/services/practice/log-practice';
import type { Member } from './at-time.ts';
import { drawOf } from './draw.ts';
import type { Past } from './past.ts';
import type { Answer } from './story.ts';

type Given = { readonly student: Member; readonly replyId: string; readonly answer: Answer };

type Second = {
  readonly student: Member;
  readonly programmeId: string;
  readonly at: Date;
  readonly session: number;
  readonly told: Reply<'logPractice'>;
  readonly answer: Answer;
};
/** A second drill goes better from the start: it is the easier one. Common practice, no source. */
const easier = 0.08;

/** The drill beside the first, where there is one that goes on: after it, on the same day. */
const practiseSecond = async (past: Past, given: Second): Promise<void> => {
  const { student, programmeId, at, session, told, answer } = given;
  const { second } = told.programme;
  if (second === null || second.done || answer.second === undefined) return;
  const step = second.drill.ladder.find(({ id }) => id === second.rung);
  const balls = step?.balls ?? 10;
  const [first, gain] = answer.skill;
  const draw = drawOf(`second ${student.name} ${answer.number} ${session}`);
  await logPractice({
    ctx: past.of(student, new Date(at.getTime() + answer.second.minutes[0] * 60_000)),
    input: {
      ...{ id: programmeId, drillId: second.drill.id, rung: second.rung, balls },
      clean: draw.binomial(balls, Math.min(0.92, first + easier + gain * session)),
      ...{ filmed: step?.filmed === true, pain: 'none' },
    },
  });
};

/** What came after a reply: practice on the rung that the gate has led to, and the check-in at its hour. */
export const seedPractice = async (past: Past, { student, replyId, answer }: Given): Promise<void> => {
  const { academyId } = student;
  const reply = await past.tx.reply.findUniqueOrThrow({
    where: { academyId_id: { academyId, id: replyId } },
    select: { programmeId: true },
  });
  const { programmeId } = reply;
  if (programmeId === null) return;
  const where = { academyId_id: { academyId, id: programmeId } };
  const programme = await past.tx.programme.findUniqueOrThrow({ where });
  const checkIn = await past.tx.checkIn.findFirst({
    where: { academyId, programmeId, status: 'scheduled' },
    select: { id: true, dueAt: true },
  });
  const dueAt = checkIn !== null && checkIn.dueAt < answer.until ? checkIn.dueAt : null;
  const ask = async (): Promise<void> => {
    if (checkIn === null || dueAt === null) return;
    await sendDueCheckIn({ ctx: past.system(dueAt), input: { checkInId: checkIn.id } });
  };
  const draw = drawOf(`practice ${student.name} ${answer.number}`);
  const drill = drillById(programme.drillId);
  let { rung, status } = programme;
  let asked = false;
  for (const [session, at] of answer.practice.entries()) {
    if (!asked && dueAt !== null && dueAt <= at) {
      await ask();
      asked = true;
    }
    if (status !== 'open') break;
    const isLast = session === answer.practice.length - 1;
    const step = drill.ladder.find((it) => it.id === rung);
    const balls = step?.allOf ?? 10;
    const [first, gain] = answer.skill;
    const clean = draw.binomial(balls, Math.min(0.92, first + gain * session));
    const told = await logPractice({
      ctx: past.of(student, at),
      input: {
        id: programmeId,
        ...{ rung, balls, clean },
        filmed: step?.filmed === true || draw.next() < 0.3,
        pain: isLast ? (answer.endsInPain ?? 'none') : 'none',
      },
    });
    ({ rung, status } = told.programme);
    if (status === 'open') await practiseSecond(past, { student, programmeId, at, session, told, answer });
  }
  if (!asked) await ask();
};
