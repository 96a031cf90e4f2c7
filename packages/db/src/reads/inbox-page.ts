import type { InboxItem } from '@ballfirst/contracts/http/inbox';
import { isoTimestamps } from '../iso-timestamps.ts';
import { namedCall, type Pooled } from '../named-call.ts';

export type InboxKind = InboxItem['kind'];
type Swing = Extract<InboxItem, { kind: 'swing' }>;
type Programme = NonNullable<InboxItem['last']>;

/**
 * One thing that waits, as the inbox shows it. Words are of the closed lists: checks of the table see to that. Instants are
 * ISO 8601 in UTC, as the answer has them: a page has hundreds.
 */
export type InboxRow = {
  /** Of the submission, or of the concern. */
  id: string;
  kind: InboxKind;
  priorityKey: string;
  studentId: string;
  studentName: string;
  standing: InboxItem['student']['standing'];
  /** By the student's own calendar; null for one who is on no trial, or whose trial has not begun. */
  trialDay: number | null;
  trialEndsAt: string | null;
  /** Of the academy. */
  zone: string;
  /** Null for a concern, as are lead fault and tally. */
  club: Swing['club'] | null;
  /** Of the first clip; null when there is none. */
  view: Swing['view'] | null;
  swingLength: Swing['swingLength'] | null;
  leadFault: Swing['leadFault'];
  tally: Swing['tally'] | null;
  note: string;
  pain: Swing['pain'];
  painSeenAt: string | null;
  reasons: InboxItem['reasons'];
  raisedAt: string;
  answerBy: string;
  claimedBy: string | null;
  claimedByName: string | null;
  claimExpiresAt: string | null;
  handedByName: string | null;
  handedWhy: string | null;
  /** The first clip that has a picture. */
  posterClipId: string | null;
  /** The student's last programme, whatever became of it; its fields are null together. */
  programmeId: string | null;
  cause: string | null;
  drillId: string | null;
  rung: string | null;
  programmeStatus: Programme['status'] | null;
  lastVerdict: Programme['lastVerdict'];
  version: number;
};

export type InboxFilters = {
  fault?: string;
  /** A membership id; `none`: those nobody holds at `now`. */
  claimedBy?: string;
  /** `pain` has the swings whose pain nobody has read, too. */
  kind?: InboxKind;
  /** Part of a student's name, whatever the case. */
  search?: string;
};

export type InboxQuery = {
  academyId: string;
  limit: number;
  after?: { key: Date; id: string };
  filters: InboxFilters;
  /** A claim that has run out at this instant is shown as none. */
  now: Date;
};

const statement = {
  name: 'inbox_page',
  text: 'SELECT * FROM inbox_page($1, $2, $3, $4, $5, $6, $7, $8, $9)',
  types: isoTimestamps,
};

/**
 * One page of the inbox by its stored order, in one statement: the function sets the tenant for itself. Call it outside
 * `withAcademy`; inside another academy's transaction it raises.
 */
export const readInboxPage = (db: Pooled, query: InboxQuery): Promise<InboxRow[]> =>
  namedCall<InboxRow>(db, statement, [
    query.academyId,
    query.limit,
    query.after?.key ?? null,
    query.after?.id ?? null,
    query.filters.fault ?? null,
    query.filters.claimedBy ?? null,
    query.filters.kind ?? null,
    query.filters.search ?? null,
    query.now,
  ]);
