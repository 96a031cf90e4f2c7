'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { When } from '../../../../../times/when.tsx';
import { staffWords } from '../../../../../words/staff.ts';
import styles from './staff.module.css';

type Props = {
  member: Reply<'listStaff'>['members'][number];
  own: boolean;
  busy: boolean;
  onEnd: () => void;
};

export function MemberRow({ member, own, busy, onEnd }: Props) {
  const [asking, setAsking] = useState(false);
  return (
    <li className={styles.row}>
      <div>
        <p className={styles.name}>
          {member.name} {own && <span className="soft">({staffWords.you})</span>}
        </p>
        <p className={styles.facts}>
          {staffWords.roles[member.role]} · {member.email} · {staffWords.since} <When at={member.since} />
        </p>
      </div>
      {!own && !asking && (
        <button type="button" className="small-button" onClick={() => setAsking(true)}>
          {staffWords.end}
          <span className="unseen"> {member.name}</span>
        </button>
      )}
      {asking && (
        <div className={styles.ask}>
          <p>{staffWords.endAsk(member.name)}</p>
          <button type="button" className="small-button" disabled={busy} onClick={onEnd}>
            {staffWords.endYes}
          </button>
          <button type="button" className="small-button" onClick={() => setAsking(false)}>
            {staffWords.endNo}
          </button>
        </div>
      )}
    </li>
  );
}
