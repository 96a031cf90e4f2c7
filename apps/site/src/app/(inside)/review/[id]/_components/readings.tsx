'use client';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import { RuledReading } from '../../../../../drawings/ruled-reading.tsx';
import {
  againstBand,
  bandInWords,
  byFinding,
  type Reading,
  valueInWords,
} from '../../../../../words/readings.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Evidence } from '../_marking/marking.ts';
import styles from './evidence.module.css';

/** As many as fit beside the stage; the rest is folded. */
const shownAtOnce = 10;

function ReadingLine({ reading }: { reading: Reading }) {
  const value = valueInWords(reading);
  const band = bandInWords(reading);
  return (
    <li className={styles.reading}>
      <span>
        {reading.name}
        {reading.proxy && <span className="soft small"> ({reviewWords.proxy})</span>}
      </span>
      <span className={styles.value}>{value}</span>
      <RuledReading
        value={reading.value}
        u={reading.u}
        band={reading.band}
        label={`${reading.name}: ${value}, ${againstBand(reading)}`}
      />
      <span className="small soft">
        {againstBand(reading)}
        {band !== null && `. ${reviewWords.bandFrom}: ${band}`}
      </span>
    </li>
  );
}

/** The measurements, those outside their band first, and why others could not be made. */
export function Readings({ evidence }: { evidence: Evidence | null }) {
  const readings = byFinding(evidence?.readings ?? []);
  const refusals = evidence?.refusals ?? [];
  const rest = readings.slice(shownAtOnce);
  return (
    <section className="stack tight" aria-labelledby="readings-title">
      <h2 id="readings-title">{reviewWords.evidenceTitle}</h2>
      {readings.length === 0 && <p className="soft">{reviewWords.noReadings}</p>}
      <ul className={styles.readings} aria-label={reviewWords.evidenceTitle}>
        {readings.slice(0, shownAtOnce).map((reading) => (
          <ReadingLine key={reading.key} reading={reading} />
        ))}
      </ul>
      {rest.length > 0 && (
        <details>
          <summary>{reviewWords.moreReadings(rest.length)}</summary>
          <ul className={styles.readings}>
            {rest.map((reading) => (
              <ReadingLine key={reading.key} reading={reading} />
            ))}
          </ul>
        </details>
      )}
      {refusals.length > 0 && (
        <details>
          <summary>
            {reviewWords.refused}: {refusals.length}
          </summary>
          <ul className={styles.refusals}>
            {refusals.map(({ key, words }) => (
              <li key={key}>
                {isMeasurementKey(key) ? measurementNames[key].name : key}: {words}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
