import { namedCall, type Pooled } from '../named-call.ts';

/** One waiting submission as the inbox shows it. `tally` and `reasons` are typed in contracts; parse them there. */
export type InboxRow = {
  submissionId: string;
  priorityKey: Date;
  studentId: string;
  studentName: string;
  standing: string;
  hand: 'right' | 'left';
  ageGroup: string;
  trialStartedAt: Date | null;
  trialEndsAt: Date | null;
  club: string;
  lie: string;
  /** Of the first clip; null when the submission has none. */
  view: string | null;
  swingLength: string | null;
  leadFault: string | null;
  tally: unknown;
  note: string;
  pain: 'none' | 'new' | 'worse';
  painNote: string;
  painSeenAt: Date | null;
  headStartHours: number;
  reasons: unknown;
  sentAt: Date;
  answerBy: Date;
  checkInId: string | null;
  claimedBy: string | null;
  claimedByName: string | null;
  claimExpiresAt: Date | null;
  clips: { id: string; view: string; swingLength: string; status: string; hasPoster: boolean }[];
  version: number;
};

export type InboxFilters = {
  fault?: string;
  /** A membership id; `none`: those nobody holds at `now`. */
  claimedBy?: string;
  /** `pain`: new or worse and not seen yet; `check-in`: answers a check-in; `first`: a student's first swing. */
  kind?: 'pain' | 'check-in' | 'first' | 'swing';
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
  text: 'SELECT * FROM inbox_page($1, $2, $3, $4, $5, $6, $7, $8)',
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
    query.now,
  ]);
