-- By fault, a page of the inbox is read straight from its index; and what is shown beside a row stands in one place.
-- Locks: none beyond the catalog.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- What the inbox shows of a student beside a row: SQL that is put in its place where it is called, one student by key, since
-- a join may be planned so that all students of the academy are read for the fifty of a page.
CREATE FUNCTION public.inbox_student(p_academy uuid, p_student uuid)
RETURNS TABLE (
  standing text, trial_started_at timestamptz, trial_ends_at timestamptz, name text, zone text, programme_id uuid,
  cause text, drill_id text, rung text, programme_status text, verdict text
)
LANGUAGE sql STABLE AS $$
  SELECT o.standing, o.trial_started_at, o.trial_ends_at, n.name, n.zone, g.id, g.cause, g.drill_id, g.rung, g.status,
    g.verdict
  FROM public.student o
  JOIN public.membership n ON n.academy_id = p_academy AND n.id = o.membership_id
  LEFT JOIN LATERAL (
    SELECT r.id, r.cause, r.drill_id, r.rung, r.status, (
        SELECT e.verdict FROM public.practice_entry e
        WHERE e.academy_id = p_academy AND e.programme_id = r.id ORDER BY e.at DESC LIMIT 1) AS verdict
    FROM public.programme r WHERE r.academy_id = p_academy AND r.student_id = p_student
    ORDER BY r.created_at DESC LIMIT 1
  ) g ON true
  WHERE o.academy_id = p_academy AND o.id = p_student LIMIT 1
$$;

-- The first clip of a swing: how it was filmed, and the first that has a picture.
CREATE FUNCTION public.inbox_clip(p_academy uuid, p_submission uuid)
RETURNS TABLE (view text, swing_length text, poster uuid)
LANGUAGE sql STABLE AS $$
  SELECT k.view, k.swing_length, CASE WHEN k.status = 'ready' THEN k.id ELSE (
      SELECT o.id FROM public.clip o
      WHERE o.academy_id = p_academy AND o.submission_id = p_submission AND o.status = 'ready'
      ORDER BY o.created_at, o.id LIMIT 1) END
  FROM public.clip k WHERE k.academy_id = p_academy AND k.submission_id = p_submission
  ORDER BY k.created_at, k.id LIMIT 1
$$;

GRANT EXECUTE ON FUNCTION public.inbox_student(uuid, uuid), public.inbox_clip(uuid, uuid) TO app;

-- One page of what waits, by the stored key. First the rows, each filter by an index of its own, right after
-- (p_after_key, p_after_id), so that the cost does not grow with the depth; then what is shown beside them. Statements in a
-- function are planned once a connection: a filter that is not asked for costs a comparison a row.
CREATE OR REPLACE FUNCTION public.inbox_page(
  p_academy uuid, p_limit integer, p_after_key timestamptz, p_after_id uuid, p_fault text, p_claimed_by text,
  p_kind text, p_search text, p_now timestamptz
)
RETURNS TABLE (
  id uuid, kind text, "priorityKey" timestamptz, "studentId" uuid, "studentName" text, standing text,
  "trialDay" integer, "trialEndsAt" timestamptz, zone text, club text, view text, "swingLength" text,
  "leadFault" text, tally jsonb, note text, pain text, "painSeenAt" timestamptz, reasons jsonb,
  "raisedAt" timestamptz, "answerBy" timestamptz, "claimedBy" uuid, "claimedByName" text,
  "claimExpiresAt" timestamptz, "handedByName" text, "handedWhy" text, "posterClipId" uuid, "programmeId" uuid,
  cause text, "drillId" text, rung text, "programmeStatus" text, "lastVerdict" text, version integer
)
LANGUAGE plpgsql AS $$
#variable_conflict use_column
DECLARE
  v_key timestamptz := coalesce(p_after_key, '-infinity');
  v_id uuid := coalesce(p_after_id, '00000000-0000-0000-0000-000000000000');
  v_zone text;
  v_swings public.submission[];
  v_concerns public.concern[] := '{}';
BEGIN
  PERFORM public.enter_academy(p_academy);
  SELECT a.zone INTO v_zone FROM public.academy a WHERE a.id = p_academy;
  -- By fault alone, a coach's commonest question, needs no concerns and no list of rows: straight from its index.
  IF p_fault IS NOT NULL AND p_search IS NULL AND coalesce(p_claimed_by, 'none') = 'none'
    AND coalesce(p_kind, 'swing') = 'swing' THEN
    RETURN QUERY
    SELECT w.id, w.kind, w.priority_key::timestamptz, w.student_id, t.name, t.standing,
      CASE WHEN t.standing = 'trial' AND t.trial_started_at IS NOT NULL THEN
        (p_now AT TIME ZONE t.zone)::date - (t.trial_started_at AT TIME ZONE t.zone)::date + 1 END,
      t.trial_ends_at::timestamptz, v_zone, w.club, c.view, c.swing_length, w.lead_fault, w.tally, w.note, w.pain,
      w.pain_seen_at::timestamptz, w.reasons, w.raised_at::timestamptz, w.answer_by::timestamptz,
      CASE WHEN w.claim_expires_at > p_now THEN w.claimed_by END,
      CASE WHEN w.claim_expires_at > p_now THEN (
        SELECT h.name FROM public.membership h WHERE h.academy_id = p_academy AND h.id = w.claimed_by) END,
      CASE WHEN w.claim_expires_at > p_now THEN w.claim_expires_at::timestamptz END,
      CASE WHEN w.claim_expires_at > p_now THEN (
        SELECT b.name FROM public.membership b WHERE b.academy_id = p_academy AND b.id = w.handed_by) END,
      CASE WHEN w.claim_expires_at > p_now THEN w.handed_why END,
      c.poster, t.programme_id, t.cause, t.drill_id, t.rung, t.programme_status, t.verdict, w.version
    FROM (
      SELECT s.id, 'swing' AS kind, s.priority_key, s.student_id, s.club, s.lead_fault, s.tally, s.note, s.pain,
        s.pain_seen_at, s.reasons, s.sent_at AS raised_at, s.answer_by, s.claimed_by, s.claim_expires_at, s.handed_by,
        s.handed_why, s.version
      FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.lead_fault = p_fault
        AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit
    ) w
    JOIN LATERAL public.inbox_student(p_academy, w.student_id) t ON true
    LEFT JOIN LATERAL public.inbox_clip(p_academy, w.id) c ON true
    ORDER BY w.priority_key, w.id
    LIMIT p_limit;
    RETURN;
  END IF;
  IF p_search IS NOT NULL THEN
    v_swings := ARRAY(
      SELECT s FROM public.membership m
      JOIN public.student t ON t.academy_id = p_academy AND t.membership_id = m.id
      JOIN public.submission s ON s.academy_id = p_academy AND s.student_id = t.id AND s.status = 'waiting'
      WHERE m.academy_id = p_academy AND m.role = 'student' AND strpos(lower(m.name), lower(p_search)) > 0
        AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_fault IS NULL OR s.lead_fault = p_fault)
        AND public.inbox_claim_fits(p_claimed_by, s.claimed_by, s.claim_expires_at, p_now)
        AND public.inbox_kind_fits(p_kind, s.pain, s.pain_seen_at)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSIF p_claimed_by <> 'none' THEN
    v_swings := ARRAY(
      SELECT s FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.claimed_by = p_claimed_by::uuid
        AND s.claim_expires_at > p_now AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_fault IS NULL OR s.lead_fault = p_fault)
        AND public.inbox_kind_fits(p_kind, s.pain, s.pain_seen_at)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSIF p_kind = 'pain' THEN
    v_swings := ARRAY(
      SELECT s FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.pain <> 'none' AND s.pain_seen_at IS NULL
        AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_fault IS NULL OR s.lead_fault = p_fault)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSIF p_kind <> 'swing' THEN
    v_swings := '{}';
  ELSE
    v_swings := ARRAY(
      SELECT s FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  END IF;
  -- A concern is about no miss at the ball.
  IF p_fault IS NULL AND p_kind IS DISTINCT FROM 'swing' THEN
    v_concerns := ARRAY(
      SELECT c FROM public.concern c
      WHERE c.academy_id = p_academy AND c.status = 'waiting' AND (c.priority_key, c.id) > (v_key, v_id)
        AND (p_kind IS NULL OR c.kind = p_kind)
        AND public.inbox_claim_fits(p_claimed_by, c.claimed_by, c.claim_expires_at, p_now)
        AND (p_search IS NULL OR EXISTS (
          SELECT FROM public.student t JOIN public.membership m ON m.academy_id = p_academy AND m.id = t.membership_id
          WHERE t.academy_id = p_academy AND t.id = c.student_id AND strpos(lower(m.name), lower(p_search)) > 0))
      ORDER BY c.priority_key, c.id LIMIT p_limit);
  END IF;
  RETURN QUERY
  SELECT w.id, w.kind, w.priority_key::timestamptz, w.student_id, t.name, t.standing,
    CASE WHEN t.standing = 'trial' AND t.trial_started_at IS NOT NULL THEN
      (p_now AT TIME ZONE t.zone)::date - (t.trial_started_at AT TIME ZONE t.zone)::date + 1 END,
    t.trial_ends_at::timestamptz, v_zone, w.club, c.view, c.swing_length, w.lead_fault, w.tally, w.note, w.pain,
    w.pain_seen_at::timestamptz, w.reasons, w.raised_at::timestamptz, w.answer_by::timestamptz,
    CASE WHEN w.claim_expires_at > p_now THEN w.claimed_by END,
    CASE WHEN w.claim_expires_at > p_now THEN (
      SELECT h.name FROM public.membership h WHERE h.academy_id = p_academy AND h.id = w.claimed_by) END,
    CASE WHEN w.claim_expires_at > p_now THEN w.claim_expires_at::timestamptz END,
    CASE WHEN w.claim_expires_at > p_now THEN (
      SELECT b.name FROM public.membership b WHERE b.academy_id = p_academy AND b.id = w.handed_by) END,
    CASE WHEN w.claim_expires_at > p_now THEN w.handed_why END,
    c.poster, t.programme_id, t.cause, t.drill_id, t.rung, t.programme_status, t.verdict, w.version
  FROM (
    SELECT s.id, 'swing' AS kind, s.priority_key, s.student_id, s.club, s.lead_fault, s.tally, s.note, s.pain,
      s.pain_seen_at, s.reasons, s.sent_at AS raised_at, s.answer_by, s.claimed_by, s.claim_expires_at, s.handed_by,
      s.handed_why, s.version
    FROM unnest(v_swings) s
    UNION ALL
    SELECT n.id, n.kind, n.priority_key, n.student_id, NULL, NULL, NULL, n.words, n.pain, NULL, n.reasons,
      n.raised_at, n.answer_by, n.claimed_by, n.claim_expires_at, n.handed_by, n.handed_why, n.version
    FROM unnest(v_concerns) n
  ) w
  JOIN LATERAL public.inbox_student(p_academy, w.student_id) t ON true
  LEFT JOIN LATERAL public.inbox_clip(p_academy, w.id) c ON true
  ORDER BY w.priority_key, w.id
  LIMIT p_limit;
END
$$;
