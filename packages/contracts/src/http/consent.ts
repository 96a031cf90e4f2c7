import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant } from '../words.ts';
import { Email, Guardian } from './identity.ts';
import { idParam } from './submissions.ts';

/** Where a junior's consent stands, as the junior reads it. */
export const GuardianState = z.object({
  state: z.enum(['not-needed', 'missing', 'asked', 'given', 'withdrawn']),
  guardian: z.object({ name: z.string(), email: z.string() }).nullable(),
  /** When it was asked for, given or withdrawn. */
  at: Instant.nullable(),
  textVersion: z.string().nullable(),
});

/** A consent as the guardian reads it, by the link of a letter. */
export const Consent = z.object({
  academyName: z.string(),
  studentName: z.string(),
  guardianName: z.string(),
  state: z.enum(['asked', 'given', 'withdrawn']),
  /** The text to agree to; once given, the one that was agreed to. */
  text: z.object({ version: z.string(), text: z.string() }),
  /** Beyond coaching; each is agreed to on its own. */
  purposes: z.object({ quality: z.boolean(), teaching: z.boolean() }),
  at: Instant,
  safeguardContact: z.string(),
});

/** What stands in the letter: the academy in the address, the token behind the `#`, so in no log. */
const Link = z.object({
  academy: z.string().regex(/^[a-z0-9-]{2,60}$/),
  token: z.string().regex(/^[A-Za-z0-9_-]{43}$/, 'This link is not whole. Open it from the letter again.'),
});

export const readGuardian = operation({
  id: 'readGuardian',
  method: 'GET',
  path: '/api/me/guardian',
  tag: 'identity',
  who: ['student'],
  status: 200,
  summary: "Where the consent of a junior's guardian stands.",
  reply: GuardianState,
});
export const askGuardian = operation({
  id: 'askGuardian',
  method: 'POST',
  path: '/api/me/guardian',
  tag: 'identity',
  who: ['student'],
  status: 200,
  summary:
    'Ask a guardian for consent: a letter with a link goes to the guardian; an earlier link stops working.',
  body: z.object({ name: Guardian.shape.name, relation: Guardian.shape.relation, email: Email }),
  reply: GuardianState,
});
export const readConsent = operation({
  id: 'readConsent',
  method: 'POST',
  path: '/api/consent/read',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary:
    'What the link of a letter asks a guardian. A POST, so that the link stands in no address and no log.',
  body: Link,
  reply: Consent,
  bodyLimitBytes: 4096,
});
export const giveConsent = operation({
  id: 'giveConsent',
  method: 'POST',
  path: '/api/consent/give',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary:
    "Consent as a junior's guardian to the version that was read; purposes beyond coaching one by one.",
  body: Link.extend({
    version: z.string().max(40),
    purposes: z.object({ quality: z.boolean(), teaching: z.boolean() }),
  }),
  reply: Consent,
  bodyLimitBytes: 4096,
});
export const withdrawConsent = operation({
  id: 'withdrawConsent',
  method: 'POST',
  path: '/api/consent/withdraw',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary:
    'Withdraw a consent: nothing more can be sent, and swings that were not answered yet leave the inbox.',
  body: Link,
  reply: Consent,
  bodyLimitBytes: 4096,
});
export const recordWithdrawal = operation({
  id: 'recordWithdrawal',
  method: 'POST',
  path: '/api/students/{id}/consent-withdrawn',
  tag: 'students',
  who: ['manager'],
  status: 200,
  summary: 'Record that a guardian has withdrawn consent by writing to the academy.',
  params: idParam,
  reply: z.object({ studentId: Id, at: Instant }),
});
