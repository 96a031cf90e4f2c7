'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { When } from '../../../../../times/when.tsx';
import { staffWords } from '../../../../../words/staff.ts';
import styles from './staff.module.css';

type Props = {
  invitation: Reply<'listStaff'>['invitations'][number];
  busy: boolean;
  onAgain: () => void;
  onRevoke: () => void;
};

export function InvitationRow({ invitation, busy, onAgain, onRevoke }: Props) {
  const { name, email, role, by, expired, expiresAt } = invitation;
  return (
    <li className={styles.row}>
      <div>
        <p className={styles.name}>{name}</p>
        <p className={styles.facts}>
          {staffWords.roles[role]} · {email} · {staffWords.invitedBy(by)}
        </p>
        <p className={styles.facts}>
          {expired ? (
            staffWords.expired
          ) : (
            <>
              {staffWords.expires} <When at={expiresAt} />
            </>
          )}
        </p>
      </div>
      <div className={styles.moves}>
        <button type="button" className="small-button" disabled={busy} onClick={onAgain}>
          {staffWords.again}
          <span className="unseen"> {name}</span>
        </button>
        <button type="button" className="small-button" disabled={busy} onClick={onRevoke}>
          {staffWords.revoke}
          <span className="unseen"> {name}</span>
        </button>
      </div>
    </li>
  );
}
