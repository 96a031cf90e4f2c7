import { withAcademy } from '@ballfirst/db/with-academy';
import { createAcademy, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Input } from '../operation-types.ts';
import { chooseAcademy } from './choose-academy.ts';
import { joinAcademy } from './join-academy.ts';
import { keepSession } from './keep-session.ts';
import { triesAtMost } from './limit-tries.ts';
import { readActor } from './read-actor.ts';
import { readMe } from './read-me.ts';
import { signIn } from './sign-in.ts';
import { signOut } from './sign-out.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const password = 'ten balls and a towel';
let people = 0;
const fresh = (): number => {
  people += 1;
  return people;
};
const resources = () => world.contextOf('00000000-0000-7000-8000-000000000000').resources;
const door = () => ({
  resources: resources(),
  address: `192.0.2.${fresh()}`,
  device: 'a phone',
  requestId: 'test',
});
const daysLater = (days: number): Date => new Date(factoryNow.getTime() + days * 86_400_000);

const joining = (academy: string, given: Partial<Input<'joinAcademy'>> = {}): Input<'joinAcademy'> => ({
  academy,
  name: 'Ida Lund',
  email: `ida-${fresh()}@example.test`,
  password,
  hand: 'right',
  ageGroup: 'adult',
  zone: 'Europe/Stockholm',
  guardian: null,
  ...given,
});
const joined = async (given: Partial<Input<'joinAcademy'>> = {}) => {
  const academy = await createAcademy(test.db);
  const input = joining(academy.slug, given);
  return { academy, input, ...(await joinAcademy({ ...door(), input })) };
};
const sessionOf = async (token: string) => {
  const actor = await readActor({ resources: resources(), token });
  if (actor === null) throw new Error('no session');
  return { token, actor };
};

describe('joining', () => {
  it('makes a student on trial and signs in', async () => {
    const { academy, reply, opened } = await joined();
    expect(reply).toMatchObject({
      role: 'student',
      academy: { slug: academy.slug },
      student: { standing: 'trial', trialEndsAt: '2026-03-23T23:00:00.000Z' },
    });
    const session = await sessionOf(opened.token);
    expect(await readMe({ ...door(), input: {}, session })).toEqual(reply);
  });

  it('needs a guardian for a junior and keeps the consent', async () => {
    const guardian = {
      name: 'Cy Lund',
      relation: 'parent',
      email: 'cy@example.test',
      consents: true,
    } as const;
    await expect(joined({ ageGroup: 'junior' })).rejects.toMatchObject({ code: 'consent-missing' });
    const { academy, reply } = await joined({ ageGroup: 'junior', guardian });
    const row = await withAcademy(test.db, academy.id, (tx) =>
      tx.student.findUniqueOrThrow({
        where: { academyId_id: { academyId: academy.id, id: reply.student?.id ?? '' } },
      }),
    );
    expect(row.consent).toMatchObject({ guardianName: 'Cy Lund', purposes: { coaching: true } });
  });

  it('a second academy takes the password of the account, and a wrong one answers like a wrong sign-in', async () => {
    const { input } = await joined();
    const second = await createAcademy(test.db);
    const again = { ...input, academy: second.slug };
    await expect(
      joinAcademy({ ...door(), input: { ...again, password: 'not the right one' } }),
    ).rejects.toMatchObject({ code: 'wrong-sign-in' });
    const { reply } = await joinAcademy({ ...door(), input: again });
    expect(reply.academies).toHaveLength(2);
    await expect(joinAcademy({ ...door(), input: again })).rejects.toMatchObject({
      code: 'already-a-member',
    });

    const signed = await signIn({ ...door(), input: { email: input.email, password } });
    expect(signed.reply).toMatchObject({ academy: null, role: null });
    const session = await sessionOf(signed.opened.token);
    const chosen = await chooseAcademy({ ...door(), input: { academyId: second.id }, session });
    expect(chosen).toMatchObject({ academy: { id: second.id }, role: 'student' });
    const stranger = await createAcademy(test.db);
    await expect(
      chooseAcademy({ ...door(), input: { academyId: stranger.id }, session }),
    ).rejects.toMatchObject({ code: 'not-found' });
  });

  it('makes one student of the same form sent five times at once', async () => {
    const academy = await createAcademy(test.db);
    const input = joining(academy.slug);
    const once = { owner: 'address:192.0.2.1', key: 'join-key-1', requestHash: 'form' };
    const answers = await Promise.all([1, 2, 3, 4, 5].map(() => joinAcademy({ ...door(), input, once })));
    expect(new Set(answers.map(({ reply }) => JSON.stringify(reply))).size).toBe(1);
    const students = await withAcademy(test.db, academy.id, (tx) =>
      tx.student.count({ where: { academyId: academy.id } }),
    );
    expect(students).toBe(1);
  });
});

describe('signing in', () => {
  it('answers the same for a wrong password and for an address nobody has', async () => {
    const { input } = await joined();
    const wrong = signIn({ ...door(), input: { email: input.email, password: 'wrong' } });
    const unknown = signIn({ ...door(), input: { email: 'nobody@example.test', password: 'wrong' } });
    const said = await Promise.all([wrong, unknown].map((one) => one.catch((error: unknown) => error)));
    expect(said[0]).toMatchObject({ code: 'wrong-sign-in' });
    expect(said[1]).toEqual(said[0]);
  });

  it('stops after too many tries at one account, from wherever, for a quarter of an hour', async () => {
    const { input } = await joined();
    const attempt = (given: string) => signIn({ ...door(), input: { email: input.email, password: given } });
    for (let tries = 0; tries < triesAtMost.account; tries += 1) {
      await expect(attempt('wrong')).rejects.toMatchObject({ code: 'wrong-sign-in' });
    }
    await expect(attempt(password)).rejects.toMatchObject({ code: 'too-many-tries' });
    world.now = new Date(factoryNow.getTime() + 901_000);
    expect((await attempt(password)).reply.role).toBe('student');
  });
});

describe('a session', () => {
  it('gets a new token after a day of use; the one before counts for a minute', async () => {
    const { opened } = await joined();
    world.now = daysLater(0.9);
    expect(await keepSession({ resources: resources(), session: await sessionOf(opened.token) })).toBeNull();
    world.now = daysLater(1.1);
    const session = await sessionOf(opened.token);
    const [one, two] = await Promise.all([1, 2].map(() => keepSession({ resources: resources(), session })));
    const next = one ?? two;
    expect([one, two].filter((it) => it !== null)).toHaveLength(1);
    expect((await sessionOf(next?.token ?? '')).actor.former).toBe(false);
    world.now = new Date(daysLater(1.1).getTime() + 59_000);
    expect((await sessionOf(opened.token)).actor.former).toBe(true);
    world.now = new Date(daysLater(1.1).getTime() + 61_000);
    expect(await readActor({ resources: resources(), token: opened.token })).toBeNull();
  });

  it('ends after two weeks alone and after sixty days in any case', async () => {
    const { opened } = await joined();
    let { token } = opened;
    for (let days = 10; days < 60; days += 10) {
      world.now = daysLater(days);
      token =
        (await keepSession({ resources: resources(), session: await sessionOf(token) }))?.token ?? token;
    }
    world.now = daysLater(60);
    expect(await readActor({ resources: resources(), token })).toBeNull();

    const idle = await joined();
    world.now = daysLater(73.9);
    expect(await readActor({ resources: resources(), token: idle.opened.token })).not.toBeNull();
    world.now = daysLater(74.1);
    expect(await readActor({ resources: resources(), token: idle.opened.token })).toBeNull();
  });

  it('ends here, or everywhere', async () => {
    const { opened, input } = await joined();
    const phone = await signIn({ ...door(), input: { email: input.email, password } });
    const tablet = await signIn({ ...door(), input: { email: input.email, password } });
    const alive = async () => {
      const tokens = [opened, phone.opened, tablet.opened].map(({ token }) => token);
      const found = await Promise.all(tokens.map((token) => readActor({ resources: resources(), token })));
      return found.map((actor) => actor !== null);
    };
    await signOut({ ...door(), input: { everywhere: false }, session: await sessionOf(opened.token) });
    expect(await alive()).toEqual([false, true, true]);
    await signOut({ ...door(), input: { everywhere: true }, session: await sessionOf(phone.opened.token) });
    expect(await alive()).toEqual([false, false, false]);
  });
});
