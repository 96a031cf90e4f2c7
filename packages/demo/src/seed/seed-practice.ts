import { drillById } from '@ballfirst/library/drills';
import { sendDueCheckIn } from '@ballfirst/services/follow-ups/send-due-check-in';
import { logPractice } from '@ballfirst/services/practice/log-practice';
import type { Member } from './at-time.ts';
import { drawOf } from './draw.ts';
import type { Past } from './past.ts';
import type { Answer } from './story.ts';

type Given = { readonly student: Member; readonly replyId: string; readonly answer: Answer };

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
  }
  if (!asked) await ask();
};
