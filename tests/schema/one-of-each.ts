import type { Database } from '@ballfirst/db/database';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { createClip, createMembership, createSubmission, factoryNow } from '@ballfirst/testing/factories';

const at = factoryNow;

/** A new academy with a row in every tenant table, written as the app role. @returns its id */
export const oneOfEach = async (db: Database): Promise<string> => {
  const coach = await createMembership(db);
  const { academyId } = coach;
  const submission = await createSubmission(db, { academyId });
  const { studentId, id: submissionId } = submission;
  const { id: clipId } = await createClip(db, { academyId, studentId, submissionId });
  const by = { byMembership: coach.id, at };
  const programmeId = newId();
  await withAcademy(db, academyId, async (tx) => {
    await tx.invitation.create({
      data: {
        ...{ academyId, id: newId(), name: 'Ann', email: 'ann@example.test', role: 'coach' },
        ...{ byMembership: coach.id, createdAt: at, expiresAt: at },
      },
    });
    await tx.nudge.create({
      data: {
        ...{ academyId, id: newId(), studentId, kind: 'practice', subject: programmeId },
        ...{ localDate: '2026-03-10', at },
      },
    });
    await tx.standingChange.create({
      data: { academyId, id: newId(), studentId, toStanding: 'trial', reason: 'joined', at },
    });
    await tx.guardianConsent.create({
      data: {
        ...{ academyId, id: newId(), studentId, guardianName: 'g', guardianEmail: 'g@example.test' },
        ...{ relation: 'parent', quality: false, teaching: false, askedAt: at },
      },
    });
    await tx.coachNote.create({ data: { academyId, studentId, words: 'Stiff.', version: 1, ...by } });
    await tx.lesson.create({
      data: { academyId, id: newId(), studentId, localDate: '2026-03-10', words: 'Grip.', ...by },
    });
    await tx.lineTest.create({
      data: { academyId, id: newId(), studentId, startsMm: [-40, 0, 10], localDate: '2026-03-10', ...by },
    });
    await tx.teachingClip.create({
      data: { academyId, cause: 'hang-back', title: 'Hips', url: 'https://films.example/hips', ...by },
    });
    await tx.mark.create({
      data: {
        ...{ academyId, clipId, position: 'address', point: 'ball', frame: 1, x: 10, y: 20 },
        ...{ source: 'coach', ...by },
      },
    });
    await tx.observation.create({ data: { academyId, clipId, key: 'flip', answer: 'no', ...by } });
    await tx.measurement.create({
      data: {
        academyId,
        submissionId,
        clipId,
        key: 'stance',
        unit: 'mm',
        value: 1,
        u: 1,
        methodVersion: '1',
        at,
      },
    });
    await tx.diagnosis.create({
      data: {
        ...{ academyId, id: newId(), submissionId, fault: 'fat', chosenCause: 'hang-back', setUpTicks: [] },
        ...{ inputs: {}, ranking: [], methodVersion: '1', overruled: false, ...by },
      },
    });
    await tx.reply.create({
      data: {
        ...{ academyId, id: newId(), submissionId, status: 'draft', words: '', setUpTicks: [], frames: [] },
        ...{ byMembership: coach.id, version: 1, updatedAt: at },
      },
    });
    await tx.modelSwing.create({
      data: {
        ...{ academyId, id: newId(), clipId, name: 'A model', permission: 'Allowed in writing.' },
        ...{ permittedOn: at, byMembership: coach.id, keptAt: at },
      },
    });
    await tx.talkThrough.create({
      data: {
        ...{ academyId, id: newId(), submissionId, clipId, kind: 'audio/webm', durationMs: 900 },
        ...{ track: [], captions: [], ...by },
      },
    });
    const { id: replyId } = await tx.reply.findFirstOrThrow({ where: { academyId } });
    await tx.replyVersion.create({
      data: { academyId, id: newId(), replyId, words: 'Before.', byMembership: coach.id, at },
    });
    await tx.question.create({
      data: {
        ...{ academyId, id: newId(), studentId, replyId, byMembership: coach.id },
        ...{ voice: 'student', words: 'Why?', at },
      },
    });
    await tx.libraryItem.create({
      data: { academyId, kind: 'phrase', key: 'hold', version: 1, content: {}, at },
    });
    await tx.programme.create({
      data: {
        ...{ academyId, id: programmeId, studentId, submissionId, cause: 'hang-back', drillId: 'fence' },
        ...{ drillVersion: 1, exaggeration: 'mild', place: 'mat', weeklyMinutes: 60, rung: 'brush' },
        ...{ status: 'open', createdAt: at },
      },
    });
    await tx.practiceEntry.create({
      data: {
        ...{
          academyId,
          id: newId(),
          studentId,
          programmeId,
          rung: 'brush',
          balls: 10,
          clean: 6,
          filmed: false,
        },
        ...{ pain: 'none', localDate: '2026-03-10', at, verdict: 'passed' },
      },
    });
    await tx.concern.create({
      data: {
        ...{
          academyId,
          id: newId(),
          studentId,
          kind: 'stuck',
          subjectId: programmeId,
          programmeId,
          pain: 'none',
        },
        ...{
          words: '',
          status: 'waiting',
          raisedAt: at,
          answerBy: at,
          priorityKey: at,
          reasons: [],
          version: 1,
        },
      },
    });
    await tx.checkIn.create({
      data: {
        ...{
          academyId,
          id: newId(),
          studentId,
          programmeId,
          asks: 'practice',
          localTime: '2026-03-12T08:00',
        },
        ...{ zone: 'UTC', dueAt: at, status: 'scheduled' },
      },
    });
    const counts = { entries: 1, balls: 10, clean: 6, days: 1, pains: 0, swings: 1 };
    const tally = { tallyBalls: 10, tallySolid: 4, tallyFat: 6, tallyThin: 0, tallyTopped: 0 };
    await tx.rollUp.create({
      data: { academyId, studentId, week: '2026-03-09', ...counts, ...tally, updatedAt: at },
    });
    await tx.mail.create({
      data: {
        academyId,
        id: newId(),
        toMembership: coach.id,
        kind: 'reply',
        subject: 's',
        textBody: 't',
        at,
      },
    });
    const eventId = newId();
    await tx.effect.create({ data: { academyId, eventId, name: 'mail', at } });
    await tx.idempotency.create({
      data: { academyId, owner: coach.id, key: newId(), requestHash: 'h', status: 201, body: '{}', at },
    });
    await tx.auditEntry.create({
      data: {
        ...{ academyId, id: newId(), at, actor: 'coach', action: 'reply.sent', subject: 's', detail: {} },
        requestId: 'r',
      },
    });
    await tx.outbox.create({
      data: { id: eventId, academyId, kind: 'clip.uploaded', payload: { clipId }, createdAt: at },
    });
  });
  return academyId;
};
