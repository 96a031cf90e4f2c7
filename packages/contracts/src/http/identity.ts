import { z } from 'zod';
import { operation } from '../operation.ts';
import { AgeGroup, Hand, Id, Instant, Role, Standing, Zone } from '../words.ts';

export const AcademyChoice = z.object({ id: Id, slug: z.string(), name: z.string(), role: Role });

export const Me = z.object({
  personId: Id,
  name: z.string(),
  email: z.string(),
  academies: z.array(AcademyChoice),
  /** Null until one of several academies is chosen. */
  academy: z.object({ id: Id, slug: z.string(), name: z.string(), zone: Zone }).nullable(),
  membershipId: Id.nullable(),
  role: Role.nullable(),
  student: z.object({ id: Id, hand: Hand, standing: Standing, trialEndsAt: Instant.nullable() }).nullable(),
});
export type Me = z.infer<typeof Me>;

export const Email = z
  .email()
  .max(254)
  .transform((it) => it.trim().toLowerCase());
export const Password = z.string().min(10, 'Use at least ten characters.').max(200);

export const SignIn = z.object({ email: Email, password: z.string().min(1).max(200) });
export const Guardian = z.object({
  name: z.string().trim().min(1).max(120),
  relation: z.string().trim().min(1).max(60),
  email: Email,
  /** True: the guardian sits beside and agrees here. False: a letter with a link asks for the consent. */
  consents: z.boolean(),
  /** Beyond coaching, each agreed to on its own; off unless said. */
  purposes: z.object({ quality: z.boolean(), teaching: z.boolean() }).exactOptional(),
});
export const Join = z.object({
  name: z.string().trim().min(1, 'Tell us your name.').max(120),
  email: Email,
  password: Password,
  hand: Hand,
  ageGroup: AgeGroup,
  zone: Zone,
  /** Needed for a junior, before any video. */
  guardian: Guardian.nullable(),
});

export const PublicAcademy = z.object({
  slug: z.string(),
  name: z.string(),
  trialDays: z.number().int(),
  trialStarts: z.enum(['joining', 'first-swing']),
  priceWords: z.string(),
  promiseHours: z.number().int(),
  consentAge: z.number().int(),
  consentText: z.object({ version: z.string(), text: z.string() }),
});
const slug = z.object({ academy: z.string().regex(/^[a-z0-9-]{2,60}$/) });

export const signIn = operation({
  id: 'signIn',
  method: 'POST',
  path: '/api/sign-in',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary: 'Sign in with an email address and a password; sets the session cookie.',
  body: SignIn,
  reply: Me,
  bodyLimitBytes: 4096,
});
export const signOut = operation({
  id: 'signOut',
  method: 'POST',
  path: '/api/sign-out',
  tag: 'identity',
  who: ['signed-in'],
  status: 204,
  summary: 'Sign out here, or everywhere.',
  body: z.object({ everywhere: z.boolean() }),
  reply: z.null(),
});
export const readMe = operation({
  id: 'readMe',
  method: 'GET',
  path: '/api/me',
  tag: 'identity',
  who: ['signed-in'],
  status: 200,
  summary: 'Who is signed in, in which academy and role.',
  reply: Me,
});
export const chooseAcademy = operation({
  id: 'chooseAcademy',
  method: 'PUT',
  path: '/api/me/academy',
  tag: 'identity',
  who: ['signed-in'],
  status: 200,
  summary: 'Choose one of several academies for this session.',
  body: z.object({ academyId: Id }),
  reply: Me,
});
export const readAcademy = operation({
  id: 'readAcademy',
  method: 'GET',
  path: '/api/academies/{academy}',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary: 'What a visitor may know of an academy before joining.',
  params: slug,
  reply: PublicAcademy,
});
export const joinAcademy = operation({
  id: 'joinAcademy',
  method: 'POST',
  path: '/api/join/{academy}',
  tag: 'identity',
  who: ['anyone'],
  status: 201,
  summary: 'Join an academy as a student on trial; signs in.',
  params: slug,
  body: Join,
  reply: Me,
  creates: true,
  bodyLimitBytes: 8192,
});
