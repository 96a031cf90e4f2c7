'use client';
import { LineTestPad } from '../line-test/line-test-pad.tsx';
import { lineTestWords } from '../words/line-test.ts';
import type { About } from './use-about.ts';

/** A line test that a coach notes beside the student. */
export function NoteLineTest({
  student,
  onKept,
}: {
  student: About['student'];
  onKept: () => Promise<void>;
}) {
  return (
    <details>
      <summary>{lineTestWords.note}</summary>
      <LineTestPad
        studentId={student.id}
        units={student.units}
        hand={student.hand}
        onKept={() => void onKept()}
      />
    </details>
  );
}
