'use client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { StationDrawing } from '../station/station-drawing.tsx';
import type { Station } from '../station/station-plan.ts';
import { placeNames } from '../words/names.ts';
import { drillWords, stationWords } from '../words/reply.ts';
import styles from './drill-card.module.css';

const steps: Record<string, number> = { ArrowRight: 1, ArrowLeft: -1 };

/** The station on mat, grass and at home; the student's own place comes first. Arrow keys change the place. */
export function StationTabs({ stations, hand }: { stations: readonly Station[]; hand: PlayingHand }) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const [place, setPlace] = useState(stations[0]?.place);
  const at = Math.max(
    0,
    stations.findIndex((one) => one.place === place),
  );
  const station = stations[at];
  if (station === undefined) return null;

  const move = (event: KeyboardEvent) => {
    const step = steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = (at + step + stations.length) % stations.length;
    setPlace(stations[next]?.place);
    list.current?.querySelectorAll<HTMLButtonElement>('[role=tab]')[next]?.focus();
  };

  return (
    <div className="stack">
      <div
        ref={list}
        role="tablist"
        aria-label={stationWords.places}
        className={styles.tabs}
        onKeyDown={move}
      >
        {stations.map((one, index) => (
          <button
            key={one.place}
            type="button"
            role="tab"
            id={`${id}-${one.place}`}
            aria-selected={index === at}
            aria-controls={`${id}-panel`}
            tabIndex={index === at ? 0 : -1}
            className={styles.tab}
            onClick={() => setPlace(one.place)}
          >
            {placeNames[one.place]}
          </button>
        ))}
      </div>
      <div
        role="tabpanel"
        id={`${id}-panel`}
        aria-labelledby={`${id}-${station.place}`}
        className={styles.panel}
      >
        <figure className="stack tight">
          <StationDrawing station={station} hand={hand} />
          <figcaption className="hint">{stationWords.toScale}</figcaption>
        </figure>
        <div className="stack tight">
          <h4 className={styles.part}>{drillWords.build}</h4>
          <ol className={styles.numbered}>
            {station.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <p className="small soft">
            {drillWords.needs}: {station.needs.join(', ')}.
          </p>
        </div>
      </div>
    </div>
  );
}
