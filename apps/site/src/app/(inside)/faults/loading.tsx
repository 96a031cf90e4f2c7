import { LoadingPage } from '../../../shell/loading-page.tsx';
import { faultsWords } from '../../../words/faults.ts';

export default function Loading() {
  return <LoadingPage title={faultsWords.title} />;
}
