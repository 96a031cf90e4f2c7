import { useEffect, useState } from 'react';
import { readFrameTable } from '../../../../../frames/frame-table.ts';
import { frameTimesBeside } from '../../../../../frames/use-clip.ts';

/** The true times of a rendition's frames, read once somebody asks for them; null until then and where they cannot be had. */
export const useFrameTimes = (rendition: string, wanted: boolean): readonly number[] | null => {
  const [times, setTimes] = useState<readonly number[] | null>(null);
  useEffect(() => {
    setTimes(null);
    if (!wanted) return;
    const leaving = new AbortController();
    readFrameTable(frameTimesBeside(rendition), leaving.signal)
      .then(({ timesS }) => setTimes(timesS))
      .catch(() => undefined);
    return () => leaving.abort();
  }, [rendition, wanted]);
  return times;
};
