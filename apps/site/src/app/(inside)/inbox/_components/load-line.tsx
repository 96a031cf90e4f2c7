'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { inboxWords } from '../../../../words/inbox.ts';

/** Whether what is promised for today can be kept: silent while it can. */
export function LoadLine({ rows }: { rows: number }) {
  const [load, setLoad] = useState<Reply<'readInboxLoad'> | null>(null);
  // Read anew when the list has grown or shrunk.
  useEffect(() => {
    let gone = false;
    void answerOf(api.GET('/api/inbox/load'))
      .then((answer) => !gone && rows >= 0 && setLoad(answer))
      .catch(() => undefined);
    return () => {
      gone = true;
    };
  }, [rows]);
  if (load === null || (load.beyond === 0 && load.late === 0)) return null;
  return (
    <p className="notice look">
      {load.late > 0 && `${inboxWords.lateNow(load.late)} `}
      {load.beyond > 0 && inboxWords.beyond(load.dueToday, load.canAnswer)}
    </p>
  );
}
