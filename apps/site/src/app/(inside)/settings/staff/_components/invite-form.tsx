'use client';
import type { Body } from '@ballfirst/contracts/client';
import { type FormEvent, useRef, useState } from 'react';
import { RadioRow } from '../../../../../shell/radio-row.tsx';
import { staffWords } from '../../../../../words/staff.ts';

type Invite = Body<'inviteStaff'>;
type Props = { busy: boolean; onInvite: (body: Invite) => Promise<unknown> };

export function InviteForm({ busy, onInvite }: Props) {
  const [role, setRole] = useState<Invite['role']>('coach');
  const [sentTo, setSentTo] = useState<string | null>(null);
  const form = useRef<HTMLFormElement>(null);

  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setSentTo(null);
    const filled = new FormData(event.currentTarget);
    const email = String(filled.get('email') ?? '').trim();
    const done = await onInvite({ name: String(filled.get('name') ?? '').trim(), email, role });
    if (done === null) return;
    form.current?.reset();
    setSentTo(email);
  };

  return (
    <form ref={form} onSubmit={submit} className="stack" method="post">
      <div>
        <h2>{staffWords.invite}</h2>
        <p className="soft">{staffWords.inviteLead}</p>
      </div>
      <label className="field">
        <span>{staffWords.name}</span>
        <input name="name" autoComplete="off" required maxLength={120} />
      </label>
      <label className="field">
        <span>{staffWords.email}</span>
        <input type="email" name="email" autoComplete="off" required maxLength={254} />
      </label>
      <RadioRow
        legend={staffWords.role}
        hint={staffWords.roleHint}
        names={staffWords.roles}
        order={['coach', 'manager']}
        value={role}
        onChange={setRole}
      />
      <button type="submit" className="main" disabled={busy}>
        {busy ? staffWords.busy : staffWords.go}
      </button>
      <p role="status">{sentTo !== null && staffWords.sent(sentTo)}</p>
    </form>
  );
}
