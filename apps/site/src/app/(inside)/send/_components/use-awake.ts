'use client';
import { useEffect } from 'react';

/** Asks the phone to keep its screen on while a video goes up: locked, no phone browser sends anything. */
export const useAwake = (needed: boolean): void => {
  useEffect(() => {
    if (!needed || !('wakeLock' in navigator)) return;
    let held: WakeLockSentinel | null = null;
    let over = false;
    const hold = () => {
      if (document.visibilityState !== 'visible') return;
      navigator.wakeLock.request('screen').then(
        (lock) => {
          if (over) void lock.release();
          else held = lock;
        },
        () => undefined,
      );
    };
    hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', hold);
      void held?.release();
    };
  }, [needed]);
};
