import { z } from 'zod';
import { operation } from '../operation.ts';
import { Instant } from '../words.ts';
import { Email, Me, Password } from './identity.ts';

/** 256 random bits as a letter carries them. */
const Token = z
  .string()
  .regex(/^[A-Za-z0-9_-]{43}$/, 'This link is not whole. Open it from the letter again.');
export const StaffRole = z.enum(['coach', 'manager']);

export const askReset = operation({
  id: 'askReset',
  method: 'POST',
  path: '/api/password/forgotten',
  tag: 'identity',
  who: ['anyone'],
  status: 204,
  summary:
    'Ask for a letter with a link to a new password. The answer is the same whether the address is known.',
  body: z.object({ email: Email }),
  reply: z.null(),
  bodyLimitBytes: 4096,
});
export const resetPassword = operation({
  id: 'resetPassword',
  method: 'POST',
  path: '/api/password/reset',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary: 'Choose a new password with the link of a letter: every session ends, and a new one begins here.',
  body: z.object({ token: Token, password: Password }),
  reply: Me,
  bodyLimitBytes: 4096,
});
export const readInvitation = operation({
  id: 'readInvitation',
  method: 'POST',
  path: '/api/invitations/read',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary: 'What the link of an invitation offers. A POST, so that the link stands in no address and no log.',
  body: z.object({ token: Token }),
  reply: z.object({
    academyName: z.string(),
    name: z.string(),
    email: z.string(),
    role: StaffRole,
    /** The address has an account already: its password is asked for, not a new one. */
    known: z.boolean(),
    expiresAt: Instant,
  }),
  bodyLimitBytes: 4096,
});
export const acceptInvitation = operation({
  id: 'acceptInvitation',
  method: 'POST',
  path: '/api/invitations/accept',
  tag: 'identity',
  who: ['anyone'],
  status: 200,
  summary: 'Join the staff of an academy with the link of an invitation; signs in.',
  body: z.object({
    token: Token,
    name: z.string().trim().min(1, 'Tell us your name.').max(120),
    password: Password,
  }),
  reply: Me,
  bodyLimitBytes: 4096,
});
