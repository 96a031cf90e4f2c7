import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { everyDrill } from '@ballfirst/library/cautions';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import { createClip, createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { framesKey } from '../clips/keys.ts';
import { markReplyRead } from './mark-reply-read.ts';
import { readHome } from './read-home.ts';
import { readProgramme } from './read-programme.ts';
import { readReply } from './read-reply.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const answered = async (given: Parameters<typeof createReply>[2] = {}, hand = 'right') => {
  const student = await createStudent(test.db, { hand });
  const { academyId } = student;
  const programme = await createProgramme(test.db, {
    academyId,
    studentId: student.id,
    cause: 'handle-back',
  });
  const reply = await createReply(test.db, programme, given);
  return { academyId, student, programme, reply, ctx: actingStudent(world, student) };
};

describe('a reply', () => {
  it('comes with its sentence for the hand, its drill and its cautions', async () => {
    for (const [hand, side] of [
      ['right', 'left'],
      ['left', 'right'],
    ] as const) {
      const { ctx, reply } = await answered({}, hand);
      const read = await readReply({ ctx, input: { id: reply.id } });
      expect(read).toMatchObject({ coach: 'Coach Reed', readAt: null });
      expect(read.sentence).toContain(`inside of your ${side} thigh`);
      expect(read.programme?.drill.id).toBe('flat-towel');
      expect(read.cautions).toEqual(expect.arrayContaining([...everyDrill]));
      expect(JSON.stringify(read)).not.toMatch(/[{](lead|trail)[}]/);
    }
  });

  it('without a drill still carries the cautions of every drill', async () => {
    const { ctx, reply } = await answered({ programmeId: null, cause: null });
    const read = await readReply({ ctx, input: { id: reply.id } });
    expect(read.programme).toBeNull();
    expect(read.cautions).toEqual([...everyDrill]);
  });

  it('shows the frames by their own time, with the marks of their moment in words', async () => {
    const { academyId, student, programme } = await answered();
    const clip = await createClip(test.db, {
      academyId,
      studentId: student.id,
      submissionId: programme.submissionId,
    });
    world.files.set(
      framesKey({ academyId, clipId: clip.id }),
      Buffer.from(JSON.stringify({ width: 1080, height: 1920, timesS: [0, 0.01, 0.5] })),
    );
    const by = await createMembership(test.db, { academyId });
    await withAcademy(test.db, academyId, async (tx) => {
      const mark = { academyId, clipId: clip.id, source: 'coach', byMembership: by.id, at: factoryNow };
      await tx.mark.createMany({
        data: [
          { ...mark, position: 'top', point: 'lead-ankle', frame: 2, x: 10, y: 20 },
          { ...mark, position: 'address', point: 'ball', frame: 0, x: 1, y: 2 },
        ],
      });
      await tx.reply.update({
        where: { academyId_submissionId: { academyId, submissionId: programme.submissionId } },
        data: { frames: [{ clipId: clip.id, frame: 2, position: 'top', caption: 'Here' }] },
      });
    });
    const reply = await withAcademy(test.db, academyId, (tx) =>
      tx.reply.findFirstOrThrow({ where: { academyId } }),
    );
    const read = await readReply({ ctx: actingStudent(world, student), input: { id: reply.id } });
    expect(read.frames).toEqual([
      {
        clipId: clip.id,
        frame: 2,
        timeS: 0.5,
        caption: 'Here',
        rendition: `/media/clips/${clip.id}/rendition.mp4`,
        poster: `/media/clips/${clip.id}/poster.jpg`,
        still: null,
        described: 'Here. Marked: left ankle. Drawn in: ball line.',
        marks: [{ point: 'lead-ankle', name: 'left ankle', x: 10, y: 20 }],
        widthPx: 1080,
        heightPx: 1920,
      },
    ]);
  });

  it('is read for the first time once', async () => {
    const { ctx, reply } = await answered();
    await markReplyRead({ ctx, input: { id: reply.id } });
    world.now = new Date(factoryNow.getTime() + 60_000);
    await markReplyRead({ ctx, input: { id: reply.id } });
    expect((await readReply({ ctx, input: { id: reply.id } })).readAt).toBe(factoryNow.toISOString());
  });

  it('may be read by the coaches of the academy, who do not count as its reader', async () => {
    const { academyId, reply } = await answered();
    const coach = actingStaff(world, await createMembership(test.db, { academyId }));
    expect((await readReply({ ctx: coach, input: { id: reply.id } })).id).toBe(reply.id);
    await expect(markReplyRead({ ctx: coach, input: { id: reply.id } })).rejects.toMatchObject({
      code: 'not-allowed',
    });
  });

  it('is not there for anybody else, before it is sent, or at all', async () => {
    const { academyId, ctx, reply, programme } = await answered();
    const draft = await answered({ status: 'draft', sentAt: null });
    const others = [
      actingStudent(world, await createStudent(test.db, { academyId })),
      actingStudent(world, await createStudent(test.db)),
      actingStaff(world, await createMembership(test.db)),
    ];
    const absent = { code: 'not-found' };
    for (const other of others) {
      await expect(readReply({ ctx: other, input: { id: reply.id } })).rejects.toMatchObject(absent);
      await expect(readProgramme({ ctx: other, input: { id: programme.id } })).rejects.toMatchObject(absent);
    }
    await expect(markReplyRead({ ctx: others[0] ?? ctx, input: { id: reply.id } })).rejects.toMatchObject(
      absent,
    );
    await expect(readReply({ ctx: draft.ctx, input: { id: draft.reply.id } })).rejects.toMatchObject(absent);
    await expect(readReply({ ctx, input: { id: newId() } })).rejects.toMatchObject(absent);
    const home = await readHome({ ctx: others[0] ?? ctx });
    expect(home).toMatchObject({ programme: null, latest: [], replies: [] });
  });
});
