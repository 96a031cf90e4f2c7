'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useRef } from 'react';
import { api } from '../../../../../http/browser-api.ts';

/** Tells once that the student opened the reply: reminders to read it end. A failure is left alone. */
export const useOpenedOnce = (id: string, isNew: boolean): void => {
  const said = useRef(false);
  useEffect(() => {
    if (!isNew || said.current) return;
    said.current = true;
    answerOf(api.POST('/api/replies/{id}/read', { params: { path: { id } } })).catch(() => {
      said.current = false;
    });
  }, [id, isNew]);
};
