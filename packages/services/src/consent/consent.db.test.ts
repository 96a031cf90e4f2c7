import { clipsToErase } from '@ballfirst/db/crossings/clips-to-erase';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createAcademy,
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, expect, it } from 'vitest';
import { readClipForMedia } from '../clips/read-clip-for-media.ts';
import { startClip } from '../clips/start-clip.ts';
import { consentText } from '../identity/consent-text.ts';
import { tellGuardian } from '../mail/tell-guardian.ts';
import { addClip } from '../submissions/add-clip.ts';
import { askGuardian, asksADay } from './ask-guardian.ts';
import { giveConsent } from './give-consent.ts';
import { readConsent } from './read-consent.ts';
import { readGuardian } from './read-guardian.ts';
import { recordWithdrawal } from './record-withdrawal.ts';
import { withdrawConsent } from './withdraw-consent.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const file = { fileName: 'swing.mov', view: 'face-on', swingLength: 'full', lengthBytes: 1_000 } as const;
const cy = { name: 'Cy Ash', relation: 'parent', email: 'cy@example.test' };

const junior = async () => {
  const academy = await createAcademy(test.db);
  const student = await createStudent(test.db, { academyId: academy.id, ageGroup: 'junior' });
  return { academy, student, ctx: actingStudent(world, student), academyId: academy.id };
};

/** Sends every letter that was asked for; the token of the newest is what its guardian holds. */
const tokenOf = async (academyId: string): Promise<string> => {
  const events = await withAcademy(test.db, academyId, (tx) =>
    tx.outbox.findMany({ where: { academyId, kind: 'guardian.asked' }, orderBy: { id: 'asc' } }),
  );
  for (const event of events) {
    const { consentId } = event.payload as { consentId: string };
    await tellGuardian({ ctx: world.contextOf(academyId), input: { eventId: event.id, consentId } });
  }
  return /\/consent\/[a-z0-9-]+#([\w-]{43})/.exec(world.sendings.at(-1)?.text ?? '')?.[1] ?? '';
};
const byLink = <I extends object>(academy: { slug: string }, token: string, more: I) => ({
  resources: world.contextOf('').resources,
  input: { academy: academy.slug, token, ...more },
  address: '192.0.2.1',
  requestId: 'test',
});
const yes = { version: consentText.version, purposes: { quality: true, teaching: false } };

it('lets a junior in by the link of the letter, for the purposes that were agreed to', async () => {
  const { academy, student, ctx, academyId } = await junior();
  expect(await readGuardian({ ctx })).toMatchObject({ state: 'missing' });
  await expect(startClip({ ctx, input: file })).rejects.toMatchObject({ code: 'consent-missing' });
  expect(await askGuardian({ ctx, input: cy })).toMatchObject({
    state: 'asked',
    guardian: { name: 'Cy Ash' },
  });
  await expect(startClip({ ctx, input: file })).rejects.toMatchObject({ code: 'consent-missing' });

  const token = await tokenOf(academyId);
  const read = await readConsent(byLink(academy, token, {}));
  expect(read).toMatchObject({ state: 'asked', studentName: 'A student', text: consentText });
  const stale = { ...yes, version: '2026-1' };
  await expect(giveConsent(byLink(academy, token, stale))).rejects.toMatchObject({
    code: 'changed-meanwhile',
  });
  expect(await giveConsent(byLink(academy, token, yes))).toMatchObject({
    state: 'given',
    purposes: yes.purposes,
  });
  expect(await readGuardian({ ctx })).toMatchObject({ state: 'given', textVersion: consentText.version });
  await startClip({ ctx, input: file });
  const row = await withAcademy(test.db, academyId, (tx) =>
    tx.student.findUniqueOrThrow({ where: { academyId_id: { academyId, id: student.id } } }),
  );
  expect(row.consent).toMatchObject({
    guardianEmail: cy.email,
    textVersion: consentText.version,
    purposes: { coaching: true, quality: true, teaching: false },
  });
});

it('keeps the link out of the database and out of the manager’s list', async () => {
  const { ctx, academyId } = await junior();
  await askGuardian({ ctx, input: cy });
  const token = await tokenOf(academyId);
  expect(token).toHaveLength(43);
  const kept = await withAcademy(test.db, academyId, async (tx) =>
    JSON.stringify([
      await tx.mail.findMany(),
      await tx.guardianConsent.findMany(),
      await tx.auditEntry.findMany(),
    ]),
  );
  expect(kept).not.toContain(token);
  expect(await tokenOf(academyId)).toBe(token);
});

it('is withdrawn by the link: nothing more is sent, what waits leaves the inbox', async () => {
  const { academy, student, ctx, academyId } = await junior();
  await askGuardian({ ctx, input: cy });
  const token = await tokenOf(academyId);
  await giveConsent(byLink(academy, token, yes));
  const waiting = await createSubmission(test.db, { academyId, studentId: student.id });
  const answered = await createSubmission(test.db, { academyId, studentId: student.id, status: 'answered' });
  const ofAnswered = { academyId, studentId: student.id, submissionId: answered.id };
  const seen = await createClip(test.db, ofAnswered);
  const peer = await createStudent(test.db, { academyId });
  const ofPeer = await createClip(test.db, { academyId, studentId: peer.id });
  expect(await withdrawConsent(byLink(academy, token, {}))).toMatchObject({ state: 'withdrawn' });
  await expect(startClip({ ctx, input: file })).rejects.toMatchObject({ code: 'consent-missing' });
  const clip = await createClip(test.db, { academyId, studentId: student.id });
  await expect(addClip({ ctx, input: { id: waiting.id, clipId: clip.id } })).rejects.toMatchObject({
    code: 'consent-missing',
  });
  const states = await withAcademy(test.db, academyId, (tx) =>
    tx.submission.findMany({ where: { academyId }, select: { id: true, status: true } }),
  );
  expect(states).toContainEqual({ id: waiting.id, status: 'withdrawn' });
  expect(states).toContainEqual({ id: answered.id, status: 'answered' });
  const coach = actingStaff(world, await createMembership(test.db, { academyId }));
  const read = (clipId: string) => readClipForMedia({ ctx: coach, input: { clipId, file: 'poster.jpg' } });
  await expect(read(seen.id)).rejects.toMatchObject({ code: 'consent-missing' });
  expect((await read(ofPeer.id)).type).toBe('image/jpeg');
  const due = await clipsToErase(test.db, { now: factoryNow, limit: 100 });
  expect(due).toContainEqual({ academyId, clipId: seen.id });
  expect(due.map(({ clipId }) => clipId)).not.toContain(ofPeer.id);
  const noted = await withAcademy(test.db, academyId, (tx) =>
    tx.auditEntry.findFirstOrThrow({ where: { academyId, action: 'withdraw-consent' } }),
  );
  expect(noted.detail).toMatchObject({ swingsWithdrawn: 1, videosClosed: 1 });
  // The same guardian may change the mind again.
  expect(await giveConsent(byLink(academy, token, yes))).toMatchObject({ state: 'given' });
});

it('is withdrawn by the manager for a guardian who wrote', async () => {
  const { academy, student, ctx, academyId } = await junior();
  const manager = actingStaff(world, await createMembership(test.db, { academyId, role: 'manager' }));
  const input = { id: student.id };
  await expect(recordWithdrawal({ ctx: manager, input })).rejects.toMatchObject({ code: 'wrong-state' });
  await askGuardian({ ctx, input: cy });
  await giveConsent(byLink(academy, await tokenOf(academyId), yes));
  await recordWithdrawal({ ctx: manager, input });
  expect(await readGuardian({ ctx })).toMatchObject({ state: 'withdrawn' });
});

it('asks a guardian who is somebody else, and not without end; a new letter voids the link before', async () => {
  const { academy, ctx, academyId, student } = await junior();
  const { email } = await withAcademy(test.db, academyId, (tx) =>
    tx.membership.findUniqueOrThrow({ where: { academyId_id: { academyId, id: student.membershipId } } }),
  );
  await expect(askGuardian({ ctx, input: { ...cy, email } })).rejects.toMatchObject({ code: 'bad-request' });
  await askGuardian({ ctx, input: cy });
  const first = await tokenOf(academyId);
  world.now = new Date(factoryNow.getTime() + 60_000);
  await askGuardian({ ctx, input: cy });
  await expect(readConsent(byLink(academy, first, {}))).rejects.toMatchObject({ code: 'not-found' });
  for (let ask = 2; ask < asksADay; ask += 1) await askGuardian({ ctx, input: cy });
  await expect(askGuardian({ ctx, input: cy })).rejects.toMatchObject({ code: 'too-many-tries' });
});

it('opens nothing with another academy’s name, nor after thirty days unused', async () => {
  const { academy, ctx, academyId } = await junior();
  const other = await createAcademy(test.db);
  await askGuardian({ ctx, input: cy });
  const token = await tokenOf(academyId);
  await expect(readConsent(byLink(other, token, {}))).rejects.toMatchObject({ code: 'not-found' });
  world.now = new Date(factoryNow.getTime() + 31 * 86_400_000);
  await expect(readConsent(byLink(academy, token, {}))).rejects.toMatchObject({ code: 'not-found' });
});
