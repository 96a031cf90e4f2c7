import { isoTimestamps } from '@ballfirst/db/iso-timestamps';
import type { InboxRow } from '@ballfirst/db/reads/inbox-page';
import type pg from 'pg';

export type PlainQuery = { academyId: string; limit: number; fault: string | null; free: boolean; now: Date };

/** The select of the inbox as anybody would write it for this filter, in one statement and without policies. */
const selectOf = ({ fault, free }: Pick<PlainQuery, 'fault' | 'free'>): string => `
  SELECT w.id, w.kind, w.priority_key AS "priorityKey", w.student_id AS "studentId", m.name AS "studentName", t.standing,
    CASE WHEN t.standing = 'trial' AND t.trial_started_at IS NOT NULL THEN
      ($3 AT TIME ZONE m.zone)::date - (t.trial_started_at AT TIME ZONE m.zone)::date + 1 END AS "trialDay",
    t.trial_ends_at AS "trialEndsAt", a.zone, w.club, c.view, c.swing_length AS "swingLength",
    w.lead_fault AS "leadFault", w.tally, w.note, w.pain, w.pain_seen_at AS "painSeenAt", w.reasons,
    w.raised_at AS "raisedAt", w.answer_by AS "answerBy", h.id AS "claimedBy", h.name AS "claimedByName",
    CASE WHEN h.id IS NOT NULL THEN w.claim_expires_at END AS "claimExpiresAt", b.name AS "handedByName",
    CASE WHEN h.id IS NOT NULL THEN w.handed_why END AS "handedWhy", c.poster AS "posterClipId",
    g.id AS "programmeId", g.cause, g.drill_id AS "drillId", g.rung, g.status AS "programmeStatus",
    g.verdict AS "lastVerdict", w.version
  FROM (
    (SELECT s.id, 'swing' AS kind, s.priority_key, s.student_id, s.club, s.lead_fault, s.tally, s.note, s.pain,
      s.pain_seen_at, s.reasons, s.sent_at AS raised_at, s.answer_by, s.claimed_by, s.claim_expires_at, s.handed_by,
      s.handed_why, s.version
    FROM submission s WHERE s.academy_id = $1 AND s.status = 'waiting'
      ${fault === null ? '' : 'AND s.lead_fault = $4'}
      ${free ? 'AND (s.claimed_by IS NULL OR s.claim_expires_at <= $3)' : ''}
    ORDER BY s.priority_key, s.id LIMIT $2)
    ${
      fault === null
        ? `UNION ALL
    (SELECT n.id, n.kind, n.priority_key, n.student_id, NULL, NULL, NULL, n.words, n.pain, NULL, n.reasons, n.raised_at,
      n.answer_by, n.claimed_by, n.claim_expires_at, n.handed_by, n.handed_why, n.version
    FROM concern n WHERE n.academy_id = $1 AND n.status = 'waiting'
      ${free ? 'AND (n.claimed_by IS NULL OR n.claim_expires_at <= $3)' : ''}
    ORDER BY n.priority_key, n.id LIMIT $2)`
        : ''
    }
  ) w
  JOIN academy a ON a.id = $1
  JOIN student t ON t.academy_id = $1 AND t.id = w.student_id
  JOIN membership m ON m.academy_id = $1 AND m.id = t.membership_id
  LEFT JOIN membership h ON h.academy_id = $1 AND h.id = w.claimed_by AND w.claim_expires_at > $3
  LEFT JOIN membership b ON b.academy_id = $1 AND b.id = w.handed_by AND h.id IS NOT NULL
  LEFT JOIN LATERAL (
    SELECT k.view, k.swing_length, CASE WHEN k.status = 'ready' THEN k.id ELSE (
        SELECT o.id FROM clip o
        WHERE o.academy_id = $1 AND o.submission_id = w.id AND o.status = 'ready'
        ORDER BY o.created_at, o.id LIMIT 1) END AS poster
    FROM clip k WHERE k.academy_id = $1 AND k.submission_id = w.id
    ORDER BY k.created_at, k.id LIMIT 1
  ) c ON true
  LEFT JOIN LATERAL (
    SELECT r.id, r.cause, r.drill_id, r.rung, r.status, (SELECT e.verdict FROM practice_entry e
      WHERE e.academy_id = $1 AND e.programme_id = r.id ORDER BY e.at DESC LIMIT 1) AS verdict
    FROM programme r WHERE r.academy_id = $1 AND r.student_id = w.student_id ORDER BY r.created_at DESC LIMIT 1
  ) g ON true
  ORDER BY w.priority_key, w.id LIMIT $2`;

/** Reads a page by it, as a named statement, as the API reads its own. */
export async function readPlain(on: pg.Pool | pg.Client, query: PlainQuery): Promise<InboxRow[]> {
  const { academyId, limit, fault, free, now } = query;
  const { rows } = await on.query<InboxRow>({
    name: `plain ${fault === null ? 'all' : 'fault'} ${free}`,
    text: selectOf(query),
    types: isoTimestamps,
    values: fault === null ? [academyId, limit, now] : [academyId, limit, now, fault],
  });
  return rows;
}
