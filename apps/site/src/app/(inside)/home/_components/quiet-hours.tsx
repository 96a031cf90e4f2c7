'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { ownReminderWords } from '../../../../words/settings.ts';

type Quiet = Reply<'readReminders'>['quiet'];
type Props = { quiet: Quiet; busy: boolean; onChoose: (quiet: Quiet) => Promise<boolean> };

/** What is offered first: a night. */
const night = { from: '21:00', to: '09:00' };

/** Hours of the student's own wall clock in which nothing comes that can wait. */
export function QuietHours({ quiet, busy, onChoose }: Props) {
  const [hours, setHours] = useState(quiet ?? night);
  const [saved, setSaved] = useState(false);
  const change = (part: 'from' | 'to', value: string) => {
    setSaved(false);
    if (value !== '') setHours((now) => ({ ...now, [part]: value }));
  };
  return (
    <div className="stack tight">
      <label className="choice">
        <input
          type="checkbox"
          checked={quiet !== null}
          disabled={busy}
          onChange={(event) => void onChoose(event.target.checked ? hours : null)}
        />
        {ownReminderWords.quiet}
      </label>
      {quiet !== null && (
        <div className="row">
          {(['from', 'to'] as const).map((part) => (
            <label key={part} className="field">
              <span>{ownReminderWords[part]}</span>
              <input
                type="time"
                required
                value={hours[part]}
                onChange={(event) => change(part, event.target.value)}
              />
            </label>
          ))}
          <button
            type="button"
            disabled={busy || (hours.from === quiet.from && hours.to === quiet.to)}
            onClick={() => void onChoose(hours).then(setSaved)}
          >
            {ownReminderWords.save}
          </button>
          <span role="status" className="small">
            {saved && ownReminderWords.saved}
          </span>
        </div>
      )}
    </div>
  );
}
