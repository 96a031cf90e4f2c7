'use client';
import { useEffect, useState } from 'react';
import { type Frame, SwingFrame } from '../../../../swing-frame/swing-frame.tsx';
import { lookWords } from '../../../../words/look.ts';
import { LocalInput } from './local-input.tsx';
import { LocalSwing } from './local-swing.tsx';
import styles from './look.module.css';

type Chosen = { readonly file: File; readonly address: string };

/** A swing just filmed beside the coach's picture. The file is read where it is: no request carries any of it. */
export function Look({ coach }: { coach: Frame | null }) {
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const address = chosen?.address ?? null;
  useEffect(() => {
    // The reader of videos is fetched now: on the range there may be no signal when it is needed.
    void import('mediabunny').catch(() => undefined);
  }, []);
  useEffect(() => {
    if (address === null) return;
    return () => URL.revokeObjectURL(address);
  }, [address]);
  const choose = (file: File) => setChosen({ file, address: URL.createObjectURL(file) });
  const picture = (
    <section className="stack tight" aria-labelledby="look-coach">
      <h2 id="look-coach">{lookWords.coach}</h2>
      {coach === null ? <p className="soft">{lookWords.noCoach}</p> : <SwingFrame frame={coach} />}
    </section>
  );
  return (
    <>
      <LocalInput again={chosen !== null} onFile={choose} />
      {chosen === null ? (
        <>
          <p className="soft">{lookWords.offline}</p>
          <div className={styles.alone}>{picture}</div>
        </>
      ) : (
        <LocalSwing key={chosen.address} file={chosen.file} address={chosen.address} beside={picture} />
      )}
    </>
  );
}
