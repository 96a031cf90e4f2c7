import { LoadingPage } from '../../../shell/loading-page.tsx';
import { lineTestWords } from '../../../words/line-test.ts';

export default function Loading() {
  return <LoadingPage title={lineTestWords.title} />;
}
