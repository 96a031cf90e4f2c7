'use client';
import type { Reply } from '@ballfirst/contracts/client';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { staffWords } from '../../../../../words/staff.ts';
import { InvitationRow } from './invitation-row.tsx';
import { InviteForm } from './invite-form.tsx';
import { MemberRow } from './member-row.tsx';
import styles from './staff.module.css';
import { useStaff } from './use-staff.ts';

export function Staff({ first, own }: { first: Reply<'listStaff'>; own: string | null }) {
  const { staff, busy, trouble, invite, revoke, end } = useStaff(first);
  return (
    <>
      <ul className={styles.rows}>
        {staff.members.map((member) => (
          <MemberRow
            key={member.id}
            member={member}
            own={member.id === own}
            busy={busy}
            onEnd={() => end(member.id)}
          />
        ))}
      </ul>
      <TroubleNote trouble={trouble} />
      <section className="stack">
        <h2>{staffWords.invitations}</h2>
        {staff.invitations.length === 0 && <p className="soft">{staffWords.noInvitations}</p>}
        <ul className={styles.rows}>
          {staff.invitations.map((invitation) => (
            <InvitationRow
              key={invitation.id}
              invitation={invitation}
              busy={busy}
              onAgain={() =>
                invite({ name: invitation.name, email: invitation.email, role: invitation.role })
              }
              onRevoke={() => revoke(invitation.id)}
            />
          ))}
        </ul>
      </section>
      <InviteForm busy={busy} onInvite={invite} />
    </>
  );
}
