'use client';
import type { Reply } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { useState } from 'react';
import { Cautions } from '../../../../drill-card/cautions.tsx';
import { LineTestPad } from '../../../../line-test/line-test-pad.tsx';
import { LineTestResult } from '../../../../line-test/line-test-result.tsx';
import { When } from '../../../../times/when.tsx';
import { homeWords } from '../../../../words/home.ts';
import { lineTestWords } from '../../../../words/line-test.ts';

type Props = {
  studentId: string;
  hand: 'right' | 'left';
  first: Reply<'listLineTests'>;
  cautions: readonly string[];
};

/** The student's line tests: how it is done, a new one, and what came out. */
export function LineTest({ studentId, hand, first, cautions }: Props) {
  const [tests, setTests] = useState(first);
  return (
    <>
      <div className="stack tight">
        <h1>{lineTestWords.title}</h1>
        <p>{lineTestWords.lead}</p>
        <ol className="stack tight">
          {lineTestWords.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </div>
      <Cautions title={homeWords.cautionsTitle} cautions={cautions} />
      <LineTestPad studentId={studentId} units={tests.units} hand={hand} onKept={setTests} />
      <section className="stack ruled" aria-labelledby="tests-title">
        <h2 id="tests-title">{lineTestWords.earlier}</h2>
        {tests.items.length === 0 && <p className="soft">{lineTestWords.none}</p>}
        {tests.items.map((test) => (
          <div key={test.id} className="stack tight">
            <h3>
              <When at={test.at} as="day" />
              <span className="small soft">, {lineTestWords.by(test.by)}</span>
            </h3>
            <LineTestResult test={test} units={tests.units} hand={hand} />
          </div>
        ))}
      </section>
      <p>
        <Link href="/home">{lineTestWords.toHome}</Link>
      </p>
    </>
  );
}
