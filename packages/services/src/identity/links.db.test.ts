import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import { createAcademy, createMembership, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { tellInvitation } from '../mail/tell-invitation.ts';
import { tellReset } from '../mail/tell-reset.ts';
import { endStaff } from '../staff/end-staff.ts';
import { inviteStaff } from '../staff/invite-staff.ts';
import { listStaff } from '../staff/list-staff.ts';
import { revokeInvitation } from '../staff/revoke-invitation.ts';
import { listMail } from '../students/list-mail.ts';
import { acceptInvitation } from './accept-invitation.ts';
import { askReset } from './ask-reset.ts';
import { joinAcademy } from './join-academy.ts';
import { readActor } from './read-actor.ts';
import { readInvitation } from './read-invitation.ts';
import { resetPassword } from './reset-password.ts';
import { signIn } from './sign-in.ts';

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
const changed = 'a towel and ten balls';
let people = 0;
const fresh = (): number => {
  people += 1;
  return people;
};
const door = () => ({
  resources: world.contextOf('00000000-0000-7000-8000-000000000000').resources,
  address: `198.51.100.${fresh()}`,
  device: 'a phone',
  requestId: 'test',
});
const laterBy = (minutes: number): void => {
  world.now = new Date(world.now.getTime() + minutes * 60_000);
};
/** The token in the newest letter to an address, as its reader follows it. */
const tokenIn = (address: string): string => {
  const letter = world.sendings.filter(({ to }) => to.address === address).at(-1);
  const found = /#([A-Za-z0-9_-]{43})$/m.exec(letter?.text ?? '');
  if (found?.[1] === undefined) throw new Error('no link in the letter');
  expect(letter?.html).toContain(found[1]);
  return found[1];
};
const events = async (academyId: string, kind: string) =>
  (await withAcademy(test.db, academyId, (tx) => tx.outbox.findMany({ where: { academyId, kind } }))).map(
    ({ id, payload }) => ({ eventId: id, ...(payload as Record<string, string>) }),
  );

const student = async () => {
  const academy = await createAcademy(test.db);
  const email = `lin-${fresh()}@example.test`;
  const joined = await joinAcademy({
    ...door(),
    input: {
      ...{ academy: academy.slug, name: 'Lin Moe', email, password, hand: 'right' },
      ...{ ageGroup: 'adult', zone: 'UTC', guardian: null },
    },
  });
  return { academyId: academy.id, email, token: joined.opened.token };
};
const asked = async () => {
  const it = await student();
  await askReset({ ...door(), input: { email: it.email } });
  const [event] = await events(it.academyId, 'reset.asked');
  const input = {
    eventId: event?.eventId ?? '',
    membershipId: (event as { membershipId?: string })?.membershipId ?? '',
  };
  await tellReset({ ctx: world.contextOf(it.academyId), input });
  return { ...it, link: tokenIn(it.email) };
};

describe('a forgotten password', () => {
  it('is replaced by the link of a letter; every other session ends', async () => {
    const { email, token, link } = await asked();
    const { reply, opened } = await resetPassword({ ...door(), input: { token: link, password: changed } });
    expect(reply).toMatchObject({ email, role: 'student' });
    const { resources } = door();
    expect(await readActor({ resources, token })).toBeNull();
    expect(await readActor({ resources, token: opened.token })).not.toBeNull();
    await expect(signIn({ ...door(), input: { email, password } })).rejects.toMatchObject({
      code: 'wrong-sign-in',
    });
    await signIn({ ...door(), input: { email, password: changed } });
  });

  it('has a link that works once, for half an hour, and only the newest', async () => {
    const { email, academyId, link } = await asked();
    const again = (await events(academyId, 'reset.asked'))[0] as { membershipId?: string };
    laterBy(5);
    await tellReset({
      ctx: world.contextOf(academyId),
      input: { eventId: newId(), membershipId: again.membershipId ?? '' },
    });
    const newest = tokenIn(email);
    const use = (token: string) => resetPassword({ ...door(), input: { token, password: changed } });
    await expect(use(link)).rejects.toMatchObject({ code: 'link-used-up' });
    laterBy(31);
    await expect(use(newest)).rejects.toMatchObject({ code: 'link-used-up' });
    laterBy(-10);
    const tries = await Promise.allSettled([use(newest), use(newest), use(newest)]);
    expect(tries.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
  });

  it('leaves no link in the list of mail, where a manager could open the account', async () => {
    const { academyId, link } = await asked();
    const mail = await withAcademy(test.db, academyId, (tx) =>
      tx.mail.findMany({ where: { academyId, kind: 'reset' } }),
    );
    expect(mail).toHaveLength(1);
    expect(mail[0]?.textBody).toContain('Choose a new password');
    expect(JSON.stringify(mail)).not.toContain(link);
  });

  it('answers the same whether the address is known, and writes to nobody who is not', async () => {
    const before = world.sendings.length;
    expect(await askReset({ ...door(), input: { email: 'nobody@example.test' } })).toBeNull();
    expect(world.sendings.length).toBe(before);
  });

  it('is asked for five times in a quarter of an hour at most', async () => {
    const { email } = await student();
    for (let i = 0; i < 5; i += 1) await askReset({ ...door(), input: { email } });
    await expect(askReset({ ...door(), input: { email } })).rejects.toMatchObject({ code: 'too-many-tries' });
  });
});

const academyWithManager = async () => {
  const manager = await createMembership(test.db, { role: 'manager', name: 'Odd Vik' });
  return { manager, academyId: manager.academyId, ctx: actingStaff(world, manager) };
};
const invited = async (role: 'coach' | 'manager' = 'coach', email = `ane-${fresh()}@example.test`) => {
  const academy = await academyWithManager();
  const invitation = await inviteStaff({ ctx: academy.ctx, input: { name: 'Ane Li', email, role } });
  const ctx = world.contextOf(academy.academyId);
  const tell = () => tellInvitation({ ctx, input: { eventId: newId(), invitationId: invitation.id } });
  await tell();
  return { ...academy, invitation, email, tell, link: tokenIn(email) };
};
const accept = (token: string, given: { name?: string; password?: string } = {}) =>
  acceptInvitation({ ...door(), input: { token, name: 'Ane Li', password, ...given } });

describe('an invitation', () => {
  it('says what it offers and makes a coach, once', async () => {
    const { ctx, link, email } = await invited();
    expect(await readInvitation({ ...door(), input: { token: link } })).toMatchObject({
      ...{ email, role: 'coach', known: false, name: 'Ane Li' },
    });
    const { reply } = await accept(link);
    expect(reply).toMatchObject({ email, role: 'coach' });
    const { members, invitations } = await listStaff({ ctx, input: {} });
    expect(members.map(({ name, role }) => [name, role])).toEqual([
      ['Ane Li', 'coach'],
      ['Odd Vik', 'manager'],
    ]);
    expect(invitations).toEqual([]);
    await expect(accept(link)).rejects.toMatchObject({ code: 'link-used-up' });
  });

  it('stands in the manager’s list under the address it went to, without its link', async () => {
    const { ctx, link, email } = await invited();
    const { items } = await listMail({ ctx, input: { limit: 5 } });
    expect(items).toMatchObject([{ to: `Ane Li <${email}>`, kind: 'invitation' }]);
    expect(items[0]?.text).not.toContain(link);
  });

  it('asks whoever has an account for its password', async () => {
    const { email } = await student();
    const { link } = await invited('manager', email);
    expect(await readInvitation({ ...door(), input: { token: link } })).toMatchObject({ known: true });
    await expect(accept(link, { password: 'not the password' })).rejects.toMatchObject({
      code: 'wrong-sign-in',
    });
    const { reply } = await accept(link);
    expect(reply.academies).toHaveLength(2);
    expect(reply.role).toBe('manager');
  });

  it('stops working when it is taken back, replaced or a week old', async () => {
    const { ctx, invitation, link, email } = await invited();
    const { id: second } = await inviteStaff({ ctx, input: { name: 'Ane Li', email, role: 'manager' } });
    expect((await listStaff({ ctx, input: {} })).invitations.map(({ id }) => id)).toEqual([second]);
    await expect(accept(link)).rejects.toMatchObject({ code: 'link-used-up' });
    await revokeInvitation({ ctx, input: { id: second } });
    await revokeInvitation({ ctx, input: { id: invitation.id } });
    expect((await listStaff({ ctx, input: {} })).invitations).toEqual([]);
    const late = await invited();
    laterBy(7 * 24 * 60);
    await expect(accept(late.link)).rejects.toMatchObject({ code: 'link-used-up' });
    expect((await listStaff({ ctx: late.ctx, input: {} })).invitations).toMatchObject([{ expired: true }]);
  });

  it('is not written to whoever has accepted it meanwhile', async () => {
    const { link, tell } = await invited();
    await accept(link);
    const before = world.sendings.length;
    expect(await tell()).toEqual({ sent: 0 });
    expect(world.sendings.length).toBe(before);
  });

  it('is not for members, and only managers invite', async () => {
    const { ctx, manager, academyId } = await invited();
    await expect(
      inviteStaff({ ctx, input: { name: 'Odd', email: manager.email, role: 'coach' } }),
    ).rejects.toMatchObject({ code: 'already-a-member' });
    const coach = await createMembership(test.db, { academyId, role: 'coach' });
    await expect(
      inviteStaff({
        ctx: actingStaff(world, coach),
        input: { name: 'Eve', email: 'eve@example.test', role: 'manager' },
      }),
    ).rejects.toMatchObject({ code: 'not-allowed' });
  });
});

describe('leaving the staff', () => {
  it('keeps a manager, whoever goes and however many go at once', async () => {
    const { ctx, academyId, manager } = await academyWithManager();
    await expect(endStaff({ ctx, input: { id: manager.id } })).rejects.toMatchObject({
      code: 'last-manager',
    });
    const second = await createMembership(test.db, { academyId, role: 'manager', name: 'Ida' });
    const both = await Promise.allSettled([
      endStaff({ ctx, input: { id: second.id } }),
      endStaff({ ctx: actingStaff(world, second), input: { id: manager.id } }),
    ]);
    expect(both.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
  });

  it('can be undone by a new invitation', async () => {
    const { ctx, link, email, academyId } = await invited();
    await accept(link);
    const { members } = await listStaff({ ctx, input: {} });
    const id = members.find((it) => it.email === email)?.id ?? '';
    await endStaff({ ctx, input: { id } });
    expect((await listStaff({ ctx, input: {} })).members).toHaveLength(1);
    const { id: again } = await inviteStaff({ ctx, input: { name: 'Ane Li', email, role: 'coach' } });
    await tellInvitation({
      ctx: world.contextOf(academyId),
      input: { eventId: newId(), invitationId: again },
    });
    await accept(tokenIn(email));
    expect((await listStaff({ ctx, input: {} })).members).toHaveLength(2);
  });
});
