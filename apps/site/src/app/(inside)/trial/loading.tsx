import { LoadingPage } from '../../../shell/loading-page.tsx';
import { ownTrialWords } from '../../../words/asking.ts';

export default function Loading() {
  return <LoadingPage title={ownTrialWords.title} />;
}
