'use client';
import type { Picture, Setting } from '@ballfirst/swing/marks/marks';
import { useMemo } from 'react';
import { hintWords } from '../../../../../words/hints.ts';
import type { Mark } from '../_marking/marking.ts';
import { readTrail, type TrailReading } from '../_stage/read-trail.ts';
import type { Trail } from '../_stage/use-trail.ts';

type Props = {
  trail: Trail;
  marks: readonly Mark[];
  picture: Picture;
  setting: Setting;
  canWork: boolean;
};
const inWords = (reading: TrailReading): string => {
  if (reading.kind === 'refused') return reading.words;
  const side = reading.aheadMm >= 0 ? 'ahead of' : 'behind';
  return hintWords.lowPoint(side, Math.round(Math.abs(reading.aheadMm)), Math.round(reading.uMm));
};

/** The clubhead over frames and what it says of the arc. */
export function TrailPanel({ trail, marks, picture, setting, canWork }: Props) {
  const count = trail.trail.length;
  const reading = useMemo(
    () => (count === 0 ? null : readTrail(trail.trail, marks, picture, setting)),
    [count, trail.trail, marks, picture, setting],
  );
  if (setting.view !== 'face-on') return null;
  return (
    <details>
      <summary className="small">{hintWords.trail}</summary>
      <div className="stack tight">
        <p className="small">{hintWords.trailLead}</p>
        <p className="row">
          <button
            type="button"
            className="small-button"
            aria-pressed={trail.on}
            disabled={!canWork}
            onClick={trail.toggle}
          >
            {trail.on ? hintWords.trailOff : hintWords.trailOn}
          </button>
          {count > 0 && (
            <>
              <button type="button" className="small-button" onClick={trail.back}>
                {hintWords.trailBack}
              </button>
              <button type="button" className="small-button" onClick={trail.clear}>
                {hintWords.trailClear}
              </button>
            </>
          )}
        </p>
        {reading !== null && (
          <p className="small" role="status">
            {hintWords.trailCount(count)} {inWords(reading)}
          </p>
        )}
      </div>
    </details>
  );
}
