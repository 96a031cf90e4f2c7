import { LoadingPage } from '../../../shell/loading-page.tsx';
import { learningWords } from '../../../words/learning.ts';

export default function Loading() {
  return <LoadingPage title={learningWords.title} />;
}
