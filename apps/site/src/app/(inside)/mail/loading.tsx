import { LoadingPage } from '../../../shell/loading-page.tsx';
import { mailWords } from '../../../words/mail.ts';

export default function Loading() {
  return <LoadingPage title={mailWords.title} />;
}
