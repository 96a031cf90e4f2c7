'use client';
import { type Point, type Position, points, positions, type View } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { useState } from 'react';
import { SelectField } from '../../../../../shell/select-field.tsx';
import { hintWords } from '../../../../../words/hints.ts';
import { pointNames, positionNames } from '../../../../../words/marks.ts';

type Props = { view: View; canWork: boolean; onPlace: (place: Place) => void };

/** What only one view shows. */
const onlyBehind: ReadonlySet<Point> = new Set([
  ...(['hands', 'seat-line', 'toe-line', 'lead-toe', 'trail-toe', 'thigh-front'] as const),
]);
const onlyFaceOn: ReadonlySet<Point> = new Set(['lead-thigh-inside']);

/** Any other mark: the target stick, or a point that the first pass does not ask for. */
export function AlsoMark({ view, canWork, onPlace }: Props) {
  const left = view === 'face-on' ? onlyBehind : onlyFaceOn;
  const seen = points.filter((point) => !left.has(point));
  const [point, setPoint] = useState<Point>(view === 'face-on' ? 'target-stick' : 'clubhead');
  const [position, setPosition] = useState<Position>('address');
  return (
    <details>
      <summary className="small">{hintWords.also}</summary>
      <div className="stack tight">
        <SelectField
          label={hintWords.point}
          names={pointNames}
          order={seen}
          value={point}
          onChange={setPoint}
        />
        <SelectField
          label={hintWords.moment}
          names={positionNames}
          order={positions}
          value={position}
          onChange={setPosition}
        />
        {point.startsWith('target-stick') && <p className="small">{hintWords.stick}</p>}
        <p>
          <button
            type="button"
            className="small-button"
            disabled={!canWork}
            onClick={() => onPlace({ position, point })}
          >
            {hintWords.markThis}
          </button>
        </p>
      </div>
    </details>
  );
}
