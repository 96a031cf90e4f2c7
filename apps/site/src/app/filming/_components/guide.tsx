'use client';
import { useState } from 'react';
import { FilmAgainDrawing } from '../../../drawings/film-again-drawing.tsx';
import { PhoneHeight } from '../../../drawings/phone-height.tsx';
import { PhonePlace } from '../../../drawings/phone-place.tsx';
import { Cautions } from '../../../drill-card/cautions.tsx';
import { RadioRow } from '../../../shell/radio-row.tsx';
import { filmWords } from '../../../words/film.ts';
import { filmingWords } from '../../../words/filming.ts';
import styles from './guide.module.css';

type Hand = 'right' | 'left';
const reasons = Object.keys(filmingWords.wrong) as (keyof typeof filmingWords.wrong)[];

function Steps({ steps }: { steps: readonly string[] }) {
  return (
    <ol className="stack tight">
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  );
}

/** Where the phone stands in both views, how high, and what goes wrong, in our drawings; for either hand. */
export function Guide({ known, cautions }: { known: Hand | null; cautions: readonly string[] }) {
  const [hand, setHand] = useState<Hand>(known ?? 'right');
  return (
    <>
      <p className="notice">
        {filmWords.safe} {filmWords.junior}
      </p>
      {known === null && (
        <RadioRow
          legend={filmingWords.hand}
          names={filmingWords.hands}
          order={['right', 'left']}
          value={hand}
          onChange={setHand}
        />
      )}
      <section className="stack" aria-labelledby="face-on">
        <h2 id="face-on">{filmingWords.faceOnTitle}</h2>
        <PhonePlace view="face-on" hand={hand} />
        <Steps steps={filmingWords.faceOnSteps} />
      </section>
      <section className="stack" aria-labelledby="height">
        <h2 id="height">{filmingWords.heightTitle}</h2>
        <PhoneHeight />
      </section>
      <section className="stack" aria-labelledby="behind">
        <h2 id="behind">{filmingWords.behindTitle}</h2>
        <p>{filmWords.behindWhen}</p>
        <PhonePlace view="down-the-line" hand={hand} />
        <Steps steps={filmingWords.behindSteps} />
      </section>
      <section className="stack" aria-labelledby="phone">
        <h2 id="phone">{filmingWords.phoneTitle}</h2>
        <ul className="stack tight">
          {filmingWords.phone.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <section className="stack" aria-labelledby="wrong">
        <h2 id="wrong">{filmingWords.wrongTitle}</h2>
        <ul className={styles.wrong}>
          {reasons.map((reason) => (
            <li key={reason} className={styles.reason}>
              <FilmAgainDrawing reason={reason} />
              <span>{filmingWords.wrong[reason]}</span>
            </li>
          ))}
        </ul>
      </section>
      <Cautions title={filmingWords.safeTitle} cautions={cautions} />
    </>
  );
}
