import { answerOf } from '@ballfirst/contracts/client';
import { requireRole } from '../../../http/read-me.ts';
import { readPage } from '../../../http/read-page.ts';
import { settingsWords } from '../../../words/settings.ts';
import { ReminderRules } from './_components/reminder-rules.tsx';

export const metadata = { title: settingsWords.title };

export default async function Page() {
  await requireRole('/settings', ['manager']);
  const rules = await readPage('/settings', (api) => answerOf(api.GET('/api/settings/reminders')));
  return (
    <main id="content" className="page">
      <div>
        <h1>{settingsWords.reminders.title}</h1>
        <p className="soft">{settingsWords.reminders.lead}</p>
      </div>
      <ReminderRules first={rules} />
    </main>
  );
}
