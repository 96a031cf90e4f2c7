'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useState } from 'react';
import { faultsWords } from '../../../../words/faults.ts';
import { learningWords } from '../../../../words/learning.ts';
import { CountTable } from './count-table.tsx';
import styles from './faults.module.css';
import { TeachNext } from './teach-next.tsx';
import { TeachingClips } from './teaching-clips.tsx';

type Lately = Reply<'readFaultsLately'>;
type Clips = Reply<'listTeachingClips'>['items'];

type SpanProps = { span: Lately['week']; title: string; withChange: boolean };

function Span({ span, title, withChange }: SpanProps) {
  return (
    <section className="stack" aria-label={title}>
      <h2>{title}</h2>
      <CountTable
        title={faultsWords.faults}
        rows={span.faults}
        students={span.faultStudents}
        empty={faultsWords.noFaults}
        withChange={withChange}
      />
      <CountTable
        title={faultsWords.causes}
        rows={span.causes}
        students={span.causeStudents}
        empty={faultsWords.noCauses}
        withChange={withChange}
      />
    </section>
  );
}

/** What went wrong in seven days and in thirty, what to teach next, and the films that teach it. */
export function Faults({ lately, first }: { lately: Lately; first: Clips }) {
  const [clips, setClips] = useState(first);
  const quiet = lately.month.faults.length === 0 && lately.month.causes.length === 0;
  return (
    <>
      {quiet ? (
        <section className="stack tight measure">
          <h2>{faultsWords.emptyTitle}</h2>
          <p>{faultsWords.empty}</p>
        </section>
      ) : (
        <>
          <TeachNext next={lately.teachNext} clips={clips} />
          <div className={styles.spans}>
            <Span span={lately.week} title={faultsWords.week} withChange />
            <Span span={lately.month} title={faultsWords.month} withChange={false} />
          </div>
          <p className="hint measure">{faultsWords.shareHint}</p>
        </>
      )}
      <TeachingClips clips={clips} onClips={setClips} />
      <p>
        <Link href="/learning">{learningWords.title}</Link>
      </p>
    </>
  );
}
