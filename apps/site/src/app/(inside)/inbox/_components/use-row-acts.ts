import { useEffect, useRef, useState } from 'react';
import type { RowActs } from './row.tsx';

/** What a row can do, as one object that stays the same while what it does is always the latest: rows need not be drawn anew. */
export const useRowActs = (acts: RowActs): RowActs => {
  const latest = useRef(acts);
  useEffect(() => {
    latest.current = acts;
  });
  const [same] = useState<RowActs>(() => ({
    onCurrent: (item) => latest.current.onCurrent(item),
    onClaim: (item) => latest.current.onClaim(item),
    onRelease: (item) => latest.current.onRelease(item),
    onClose: (item, outcome) => latest.current.onClose(item, outcome),
  }));
  return same;
};
