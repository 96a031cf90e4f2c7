import { LoadingPage } from '../../../shell/loading-page.tsx';
import { lookWords } from '../../../words/look.ts';

export default function Loading() {
  return <LoadingPage title={lookWords.title} />;
}
