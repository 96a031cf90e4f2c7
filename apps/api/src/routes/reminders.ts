import { readReminderRules } from '@ballfirst/services/academy/read-reminder-rules';
import { setReminderRule } from '@ballfirst/services/academy/set-reminder-rule';
import { stopReminders } from '@ballfirst/services/identity/stop-reminders';
import { chooseReminders } from '@ballfirst/services/students/choose-reminders';
import { readReminders } from '@ballfirst/services/students/read-reminders';
import { type Mounting, mount } from '../door/mount.ts';
import { mountOpen } from '../door/mount-identity.ts';

export const remindersRoutes = (at: Mounting): void => {
  void at.app.register(async (app) => {
    // A mail program's one click posts a form of one known line (RFC 8058, 3.1); the token in the path says everything.
    app.addContentTypeParser('application/x-www-form-urlencoded', (_request, payload, done) => {
      payload.resume();
      done(null);
    });
    mountOpen({ ...at, app }, 'stopReminders', stopReminders);
  });
  mount(at, 'readReminders', readReminders);
  mount(at, 'chooseReminders', chooseReminders);
  mount(at, 'readReminderRules', readReminderRules);
  mount(at, 'setReminderRule', setReminderRule);
};
