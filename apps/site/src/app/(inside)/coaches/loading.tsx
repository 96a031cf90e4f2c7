import { LoadingPage } from '../../../shell/loading-page.tsx';
import { coachesWords } from '../../../words/coaches.ts';

export default function Loading() {
  return <LoadingPage title={coachesWords.title} />;
}
