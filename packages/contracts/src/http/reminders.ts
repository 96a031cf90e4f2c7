import { nudges } from '@ballfirst/progress/choose-nudge';
import { z } from 'zod';
import { operation } from '../operation.ts';

const Kind = z.enum(nudges);
const LocalTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'Give a time of the day.');
/** Times of the student's wall clock between which nothing is sent that can wait; null: none. May run over midnight. */
const Quiet = z.object({ from: LocalTime, to: LocalTime }).nullable();
/** As it is told: from one time to another one. */
const ToldQuiet = Quiet.refine((quiet) => quiet === null || quiet.from !== quiet.to, {
  message: 'Quiet hours begin and end at two different times.',
});
const Choice = z.object({ reminders: z.boolean(), quiet: Quiet });
const Rules = z.object({ items: z.array(z.object({ kind: Kind, on: z.boolean() })) });

export const stopReminders = operation({
  id: 'stopReminders',
  method: 'POST',
  path: '/api/reminders/stop/{token}',
  tag: 'reminders',
  who: ['anyone'],
  status: 204,
  summary: 'End all reminders by the link of a letter; mail programs ask this way too (RFC 8058).',
  params: z.object({ token: z.string().regex(/^[A-Za-z0-9_-]{43}$/) }),
  reply: z.null(),
});
export const readReminders = operation({
  id: 'readReminders',
  method: 'GET',
  path: '/api/me/reminders',
  tag: 'reminders',
  who: ['student'],
  status: 200,
  summary: 'Whether reminders are on, and the hours in which nothing comes that can wait.',
  reply: Choice,
});
export const chooseReminders = operation({
  id: 'chooseReminders',
  method: 'PUT',
  path: '/api/me/reminders',
  tag: 'reminders',
  who: ['student'],
  status: 200,
  summary:
    'Switch reminders on or off; replies and check-ins still come. Quiet hours left out stay as they are.',
  body: z.object({ reminders: z.boolean(), quiet: ToldQuiet.exactOptional() }),
  reply: Choice,
});
export const readReminderRules = operation({
  id: 'readReminderRules',
  method: 'GET',
  path: '/api/settings/reminders',
  tag: 'reminders',
  who: ['manager'],
  status: 200,
  summary: 'Which reminders the academy sends to its students.',
  reply: Rules,
});
export const setReminderRule = operation({
  id: 'setReminderRule',
  method: 'PUT',
  path: '/api/settings/reminders/{kind}',
  tag: 'reminders',
  who: ['manager'],
  status: 200,
  summary: 'Switch one reminder on or off for the whole academy.',
  params: z.object({ kind: Kind }),
  body: z.object({ on: z.boolean() }),
  reply: Rules,
});
