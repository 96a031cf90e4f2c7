import { createHash } from 'node:crypto';
import { createAcademy, createMembership, createStudent, factoryNow } from '@ballfirst/testing/factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newId } from '../ids.ts';
import { withAcademy } from '../with-academy.ts';
import { changePassword } from './change-password.ts';
import { chooseAcademy } from './choose-academy.ts';
import { closeSession } from './close-session.ts';
import { closeSessionsOfPerson } from './close-sessions-of-person.ts';
import { countAttempt } from './count-attempt.ts';
import { createPerson } from './create-person.ts';
import { membershipsOfPerson } from './memberships-of-person.ts';
import { openSession } from './open-session.ts';
import { rotateSession } from './rotate-session.ts';
import { sessionActor } from './session-actor.ts';
import { signInLookup } from './sign-in-lookup.ts';
import { touchSession } from './touch-session.ts';

let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

const now = factoryNow;
const later = (seconds: number): Date => new Date(now.getTime() + seconds * 1000);
const hashOf = (token: string): Buffer => createHash('sha256').update(token).digest();

const person = async (): Promise<{ personId: string; email: string }> => {
  const personId = newId();
  const email = `${personId}@example.test`;
  await createPerson(test.db, { id: personId, email, name: 'A golfer', hash: 'first', now });
  return { personId, email };
};

const session = async (personId: string, academyId: string | null = null): Promise<Buffer> => {
  const tokenHash = hashOf(newId());
  const input = { id: newId(), personId, tokenHash, academyId, now, expiresAt: later(3600), device: 'phone' };
  await openSession(test.db, input);
  return tokenHash;
};

describe('accounts', () => {
  it('finds the hash of an address in any case, and nothing for an unknown one', async () => {
    const { personId, email } = await person();
    expect(await signInLookup(test.db, { email: email.toUpperCase() })).toEqual({
      personId,
      name: 'A golfer',
      hash: 'first',
    });
    expect(await signInLookup(test.db, { email: 'nobody@example.test' })).toBeNull();
  });

  it('takes an address once and changes a password', async () => {
    const { personId, email } = await person();
    const again = { id: newId(), email: email.toUpperCase(), name: 'Another', hash: 'x', now };
    expect(await createPerson(test.db, again)).toBe(false);
    expect(await changePassword(test.db, { personId, hash: 'second', now })).toBe(true);
    expect((await signInLookup(test.db, { email }))?.hash).toBe('second');
    expect(await changePassword(test.db, { personId: newId(), hash: 'second', now })).toBe(false);
  });
});

describe('sessions', () => {
  it('speaks for a student in the chosen academy', async () => {
    const { personId, email } = await person();
    const academy = await createAcademy(test.db);
    const membership = await createMembership(test.db, { academyId: academy.id, personId, role: 'student' });
    const student = await createStudent(test.db, { academyId: academy.id, membershipId: membership.id });
    const tokenHash = await session(personId, academy.id);
    expect(await sessionActor(test.db, { tokenHash, now: later(1) })).toMatchObject({
      personId,
      email,
      academyId: academy.id,
      academySlug: academy.slug,
      academyZone: 'UTC',
      membershipId: membership.id,
      role: 'student',
      studentId: student.id,
      former: false,
      rotatedAt: now,
      seenAt: now,
      expiresAt: later(3600),
    });
  });

  it('chooses only among running memberships, and forgets one that ends', async () => {
    const { personId } = await person();
    const coach = await createMembership(test.db, { personId });
    const stranger = await createAcademy(test.db);
    const tokenHash = await session(personId);
    expect((await sessionActor(test.db, { tokenHash, now }))?.academyId).toBeNull();
    expect(await chooseAcademy(test.db, { tokenHash, academyId: stranger.id, now })).toBe(false);
    expect(await chooseAcademy(test.db, { tokenHash, academyId: coach.academyId, now })).toBe(true);
    expect((await sessionActor(test.db, { tokenHash, now }))?.role).toBe('coach');
    expect(await membershipsOfPerson(test.db, { personId })).toMatchObject([
      { academyId: coach.academyId, membershipId: coach.id, role: 'coach' },
    ]);
    await withAcademy(test.db, coach.academyId, (tx) =>
      tx.membership.update({
        where: { academyId_id: { academyId: coach.academyId, id: coach.id } },
        data: { endedAt: now },
      }),
    );
    expect(await sessionActor(test.db, { tokenHash, now })).toMatchObject({ academyId: null, role: null });
    expect(await membershipsOfPerson(test.db, { personId })).toEqual([]);
  });

  it('rotates once, and lets the former token live for its grace only', async () => {
    const { personId } = await person();
    const old = await session(personId);
    const fresh = hashOf(newId());
    const rotate = { tokenHash: old, newHash: fresh, now: later(10) };
    expect(await rotateSession(test.db, rotate)).toBe(true);
    expect(await rotateSession(test.db, { ...rotate, newHash: hashOf('a third') })).toBe(false);
    expect((await sessionActor(test.db, { tokenHash: fresh, now: later(11) }))?.former).toBe(false);
    expect((await sessionActor(test.db, { tokenHash: old, now: later(69) }))?.former).toBe(true);
    expect(await sessionActor(test.db, { tokenHash: old, now: later(70) })).toBeNull();
  });

  it('ends at its limit, at sign-out here and at sign-out everywhere', async () => {
    const { personId } = await person();
    const first = await session(personId);
    const second = await session(personId);
    expect(await sessionActor(test.db, { tokenHash: first, now: later(3600) })).toBeNull();
    expect(await closeSession(test.db, { tokenHash: first, now })).toBe(true);
    expect(await closeSession(test.db, { tokenHash: first, now })).toBe(false);
    expect(await sessionActor(test.db, { tokenHash: first, now })).toBeNull();
    expect(await closeSessionsOfPerson(test.db, { personId, now })).toBe(1);
    expect(await sessionActor(test.db, { tokenHash: second, now })).toBeNull();
  });

  it('moves the last sight of a session forward only', async () => {
    const { personId } = await person();
    const tokenHash = await session(personId);
    const sessionId = (await sessionActor(test.db, { tokenHash, now }))?.sessionId ?? '';
    await touchSession(test.db, { sessionId, now: later(60) });
    await touchSession(test.db, { sessionId, now: later(30) });
    expect((await sessionActor(test.db, { tokenHash, now }))?.seenAt).toEqual(later(60));
  });
});

describe('attempts', () => {
  it('counts twenty at once exactly and starts anew after the window', async () => {
    const input = { key: `sign-in:${newId()}`, windowSeconds: 60, now };
    const counts = await Promise.all(Array.from({ length: 20 }, () => countAttempt(test.db, input)));
    expect(counts.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    expect(await countAttempt(test.db, { ...input, now: later(59) })).toBe(21);
    expect(await countAttempt(test.db, { ...input, now: later(60) })).toBe(1);
  });
});
