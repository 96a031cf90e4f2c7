import { LoadingPage } from '../../../shell/loading-page.tsx';
import { inboxWords } from '../../../words/inbox.ts';

export default function Loading() {
  return <LoadingPage title={inboxWords.title} wide />;
}
