import { LoadingPage } from '../../../../shell/loading-page.tsx';
import { studentsWords } from '../../../../words/students.ts';

export default function Loading() {
  return <LoadingPage title={studentsWords.title} wide />;
}
