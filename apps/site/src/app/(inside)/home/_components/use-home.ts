'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';

export type HomeState = Reply<'readHome'>;

const whilePreparingMs = 3000;

/** The home as it stands: asked again while a video is being prepared, and after something was logged. */
export const useHome = (first: HomeState): { home: HomeState; renew: () => Promise<void> } => {
  const [home, setHome] = useState(first);
  useEffect(() => setHome(first), [first]);
  const renew = useCallback(async () => {
    if (document.hidden) return;
    try {
      setHome(await answerOf(api.GET('/api/home')));
    } catch {
      // What is shown stays; the next turn asks again.
    }
  }, []);
  const moving = home.latest.some(({ status }) => status === 'preparing');
  useEffect(() => {
    if (!moving) return;
    const timer = setInterval(renew, whilePreparingMs);
    return () => clearInterval(timer);
  }, [moving, renew]);
  return { home, renew };
};
