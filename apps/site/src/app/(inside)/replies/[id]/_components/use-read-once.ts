'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useRef } from 'react';
import { api } from '../../../../../http/browser-api.ts';

/** Says once that the student has the reply before them. It matters to the coach only: a failure is left alone. */
export const useReadOnce = (id: string, isNew: boolean): void => {
  const said = useRef(false);
  useEffect(() => {
    if (!isNew || said.current) return;
    said.current = true;
    answerOf(api.POST('/api/replies/{id}/read', { params: { path: { id } } })).catch(() => {
      said.current = false;
    });
  }, [id, isNew]);
};
