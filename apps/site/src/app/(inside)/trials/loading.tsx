import { LoadingPage } from '../../../shell/loading-page.tsx';
import { trialsWords } from '../../../words/trials.ts';

export default function Loading() {
  return <LoadingPage title={trialsWords.title} wide />;
}
