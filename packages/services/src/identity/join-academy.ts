import { ProblemError } from '@ballfirst/contracts/problems';
import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import { membershipsOfPerson } from '@ballfirst/db/crossings/memberships-of-person';
import type { Context } from '../context.ts';
import { once as answerOnce } from '../once.ts';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';
import { enrolStudent } from './enrol-student.ts';
import { knownZone } from './known-zone.ts';
import { limitTries } from './limit-tries.ts';
import { personOf } from './person-of.ts';
import { openSession } from './session.ts';

/**
 * Joins an academy as a student and signs in. Whoever has an account already joins with its password and so belongs
 * to two academies; a wrong one gives the same answer, after the same work, as a wrong sign-in.
 * @throws ProblemError not-found, bad-request, wrong-sign-in, already-a-member, consent-missing, too-many-tries
 */
export const joinAcademy = async (
  call: IdentityCall<'joinAcademy'>,
): Promise<SignedIn<Reply<'joinAcademy'>>> => {
  const { resources, input, address, device, requestId, once } = call;
  await limitTries({ resources, what: 'join', email: input.email, address });
  const front = await academyBySlug(resources.db, { slug: input.academy });
  if (front === null) throw new ProblemError('not-found');
  if (!knownZone(input.zone)) {
    throw new ProblemError('bad-request', 'That time zone is not one we know.', [
      { path: 'zone', message: 'Choose a time zone from the list.' },
    ]);
  }
  if (input.ageGroup === 'junior' && input.guardian === null) {
    throw new ProblemError(
      'consent-missing',
      'A junior joins with a guardian: fill in the part for the guardian.',
    );
  }
  const person = await personOf(resources, input);
  const others = await membershipsOfPerson(resources.db, { personId: person.id });
  const ctx: Context = {
    academyId: front.id,
    actor: { kind: 'system', job: 'join' },
    resources,
    requestId,
    ...(once === undefined ? {} : { once }),
  };
  const reply = await answerOnce(ctx, 'joinAcademy', async (tx) => {
    const enrolled = await enrolStudent(tx, ctx, { ...input, personId: person.id, academy: front });
    const here = { id: front.id, slug: front.slug, name: front.name, role: 'student' as const };
    const elsewhere = others.map((it) => ({ id: it.academyId, slug: it.slug, name: it.name, role: it.role }));
    return {
      personId: person.id,
      name: person.name,
      email: input.email,
      academies: [...elsewhere, here].sort((a, b) => a.name.localeCompare(b.name)),
      academy: { id: front.id, slug: front.slug, name: front.name, zone: front.zone },
      membershipId: enrolled.membershipId,
      role: 'student' as const,
      student: enrolled.student,
    };
  });
  const opened = await openSession({ resources, personId: person.id, academyId: front.id, device });
  return { reply, opened };
};
