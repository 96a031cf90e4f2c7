import { LoadingPage } from '../../../shell/loading-page.tsx';
import { collectionWords } from '../../../words/compare.ts';

export default function Loading() {
  return <LoadingPage title={collectionWords.title} />;
}
