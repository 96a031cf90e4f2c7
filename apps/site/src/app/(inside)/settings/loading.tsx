import { LoadingPage } from '../../../shell/loading-page.tsx';
import { settingsWords } from '../../../words/settings.ts';

export default function Loading() {
  return <LoadingPage title={settingsWords.reminders.title} />;
}
