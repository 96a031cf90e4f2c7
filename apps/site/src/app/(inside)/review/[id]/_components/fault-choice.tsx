'use client';
import { faultById, faultList } from '@ballfirst/library/faults';
import type { FaultId } from '@ballfirst/library/types';
import { reviewWords } from '../../../../../words/review.ts';

type Props = { fault: FaultId; onFault: (fault: FaultId) => void };

const order = faultList.map(({ id }) => id);

/** The miss that the swing is read for: marks, questions and causes go by it. */
export function FaultChoice({ fault, onFault }: Props) {
  return (
    <label className="row small">
      {reviewWords.readFor}
      <select
        value={fault}
        onChange={(event) => {
          const chosen = order.find((one) => one === event.target.value);
          if (chosen !== undefined) onFault(chosen);
        }}
      >
        {order.map((id) => (
          <option key={id} value={id}>
            {faultById(id).name}
          </option>
        ))}
      </select>
    </label>
  );
}
