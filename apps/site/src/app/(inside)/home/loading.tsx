import { LoadingPage } from '../../../shell/loading-page.tsx';
import { homeWords } from '../../../words/home.ts';

export default function Loading() {
  return <LoadingPage title={homeWords.title} />;
}
