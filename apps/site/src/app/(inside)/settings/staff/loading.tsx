import { LoadingPage } from '../../../../shell/loading-page.tsx';
import { staffWords } from '../../../../words/staff.ts';

export default function Loading() {
  return <LoadingPage title={staffWords.title} />;
}
