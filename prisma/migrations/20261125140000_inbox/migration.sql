-- The inbox of more kinds than swings: concerns beside submissions, a claim that is handed over with a line of why,
-- one read for all of it, and claims in one statement.
-- Locks: submission against writes while five partial indexes over what waits are built (one pass each over the table,
-- about a second for each million rows) and for milliseconds while two columns are added; the new table is empty.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '300s';

-- What waits for a coach and is no swing. A pain told while practising, a trial about to end unheard, a question back,
-- practice that is stuck: each stands in the same order as the swings.
CREATE TABLE public.concern (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  kind text NOT NULL,
  -- What it is about: the practice entry, the student's trial, the question, the programme.
  subject_id uuid NOT NULL,
  programme_id uuid,
  pain text NOT NULL,
  words text NOT NULL,
  status text NOT NULL,
  raised_at timestamptz(3) NOT NULL,
  answer_by timestamptz(3) NOT NULL,
  priority_key timestamptz(3) NOT NULL,
  reasons jsonb NOT NULL,
  claimed_by uuid,
  claimed_at timestamptz(3),
  claim_expires_at timestamptz(3),
  handed_by uuid,
  handed_why text,
  closed_at timestamptz(3),
  closed_by uuid,
  outcome text,
  version integer NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, programme_id) REFERENCES public.programme (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, claimed_by) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT concern_kind CHECK (kind IN ('question', 'stuck', 'pain', 'trial-ending')),
  CONSTRAINT concern_pain CHECK (pain IN ('none', 'new', 'worse')),
  CONSTRAINT concern_pain_said CHECK ((kind = 'pain') = (pain <> 'none')),
  CONSTRAINT concern_status CHECK (status IN ('waiting', 'closed')),
  CONSTRAINT concern_closed CHECK ((status = 'closed') = (closed_at IS NOT NULL)),
  CONSTRAINT concern_outcome CHECK (outcome IN ('spoke', 'wrote', 'no-need')),
  CONSTRAINT concern_claim_ends CHECK (claimed_by IS NULL OR claim_expires_at IS NOT NULL),
  CONSTRAINT concern_handed CHECK ((handed_by IS NULL) = (handed_why IS NULL))
);
CREATE INDEX concern_academy_id_student_id_raised_at_idx ON public.concern (academy_id, student_id, raised_at);
CREATE INDEX concern_inbox ON public.concern (academy_id, priority_key, id) WHERE status = 'waiting';
-- One thing is waiting once, however many workers look at it.
CREATE UNIQUE INDEX concern_once ON public.concern (academy_id, kind, subject_id) WHERE status = 'waiting';

ALTER TABLE public.concern ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.concern FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.concern TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.concern TO app;
GRANT UPDATE (status, answer_by, priority_key, reasons, claimed_by, claimed_at, claim_expires_at, handed_by,
  handed_why, closed_at, closed_by, outcome, version) ON public.concern TO app;

ALTER TABLE public.submission
  ADD COLUMN handed_by uuid,
  ADD COLUMN handed_why text,
  ADD CONSTRAINT submission_handed CHECK ((handed_by IS NULL) = (handed_why IS NULL)) NOT VALID;
ALTER TABLE public.submission VALIDATE CONSTRAINT submission_handed;
GRANT UPDATE (handed_by, handed_why) ON public.submission TO app;

CREATE INDEX submission_inbox_fault ON public.submission (academy_id, lead_fault, priority_key, id)
  WHERE status = 'waiting';
CREATE INDEX submission_inbox_claimed ON public.submission (academy_id, claimed_by, priority_key, id)
  WHERE status = 'waiting' AND claimed_by IS NOT NULL;
CREATE INDEX submission_inbox_pain ON public.submission (academy_id, priority_key, id)
  WHERE status = 'waiting' AND pain <> 'none' AND pain_seen_at IS NULL;
CREATE INDEX submission_inbox_student ON public.submission (academy_id, student_id) WHERE status = 'waiting';
CREATE INDEX submission_inbox_due ON public.submission (academy_id, answer_by) WHERE status = 'waiting';

DROP FUNCTION public.inbox_page(uuid, integer, timestamptz, uuid, text, text, text, timestamptz);

-- Whether a row passes the filter by claim: null lets all through, `none` what nobody holds, an id what that coach holds.
CREATE FUNCTION public.inbox_claim_fits(p_wanted text, p_claimed_by uuid, p_expires timestamptz, p_now timestamptz)
RETURNS boolean LANGUAGE sql IMMUTABLE
RETURN CASE
  WHEN p_wanted IS NULL THEN true
  WHEN p_wanted = 'none' THEN p_claimed_by IS NULL OR p_expires <= p_now
  ELSE p_claimed_by IS NOT NULL AND p_claimed_by = p_wanted::uuid AND p_expires > p_now END;

-- Whether a swing passes the filter by kind: under `pain` stands a swing whose pain nobody has read.
CREATE FUNCTION public.inbox_kind_fits(p_kind text, p_pain text, p_pain_seen_at timestamptz)
RETURNS boolean LANGUAGE sql IMMUTABLE
RETURN CASE
  WHEN p_kind IS NULL OR p_kind = 'swing' THEN true
  WHEN p_kind = 'pain' THEN p_pain <> 'none' AND p_pain_seen_at IS NULL
  ELSE false END;

-- One page of what waits, by the stored key. First the ids, each filter by an index of its own, right after
-- (p_after_key, p_after_id), so that the cost does not grow with the depth; then what the rows show. Statements in a
-- function are planned once a connection: a filter that is not asked for costs a comparison a row.
CREATE FUNCTION public.inbox_page(
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
  v_swings uuid[];
  v_concerns uuid[] := '{}';
BEGIN
  PERFORM public.enter_academy(p_academy);
  SELECT a.zone INTO v_zone FROM public.academy a WHERE a.id = p_academy;
  IF p_search IS NOT NULL THEN
    v_swings := ARRAY(
      SELECT s.id FROM public.membership m
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
      SELECT s.id FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.claimed_by = p_claimed_by::uuid
        AND s.claim_expires_at > p_now AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_fault IS NULL OR s.lead_fault = p_fault)
        AND public.inbox_kind_fits(p_kind, s.pain, s.pain_seen_at)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSIF p_kind = 'pain' THEN
    v_swings := ARRAY(
      SELECT s.id FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.pain <> 'none' AND s.pain_seen_at IS NULL
        AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_fault IS NULL OR s.lead_fault = p_fault)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSIF p_kind <> 'swing' THEN
    v_swings := '{}';
  ELSIF p_fault IS NOT NULL THEN
    v_swings := ARRAY(
      SELECT s.id FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.lead_fault = p_fault
        AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  ELSE
    v_swings := ARRAY(
      SELECT s.id FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND (s.priority_key, s.id) > (v_key, v_id)
        AND (p_claimed_by IS NULL OR s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
      ORDER BY s.priority_key, s.id LIMIT p_limit);
  END IF;
  -- A concern is about no miss at the ball.
  IF p_fault IS NULL AND p_kind IS DISTINCT FROM 'swing' THEN
    v_concerns := ARRAY(
      SELECT c.id FROM public.concern c
      WHERE c.academy_id = p_academy AND c.status = 'waiting' AND (c.priority_key, c.id) > (v_key, v_id)
        AND (p_kind IS NULL OR c.kind = p_kind)
        AND public.inbox_claim_fits(p_claimed_by, c.claimed_by, c.claim_expires_at, p_now)
        AND (p_search IS NULL OR EXISTS (
          SELECT FROM public.student t JOIN public.membership m ON m.academy_id = p_academy AND m.id = t.membership_id
          WHERE t.academy_id = p_academy AND t.id = c.student_id AND strpos(lower(m.name), lower(p_search)) > 0))
      ORDER BY c.priority_key, c.id LIMIT p_limit);
  END IF;
  RETURN QUERY
  SELECT w.id, w.kind, w.priority_key::timestamptz, w.student_id, m.name, t.standing,
    CASE WHEN t.standing = 'trial' AND t.trial_started_at IS NOT NULL THEN
      (p_now AT TIME ZONE m.zone)::date - (t.trial_started_at AT TIME ZONE m.zone)::date + 1 END,
    t.trial_ends_at::timestamptz, v_zone, w.club, c.view, c.swing_length, w.lead_fault, w.tally, w.note, w.pain,
    w.pain_seen_at::timestamptz, w.reasons, w.raised_at::timestamptz, w.answer_by::timestamptz, h.id, h.name,
    CASE WHEN h.id IS NOT NULL THEN w.claim_expires_at::timestamptz END,
    b.name, CASE WHEN h.id IS NOT NULL THEN w.handed_why END, c.poster, g.id, g.cause, g.drill_id, g.rung, g.status,
    g.verdict, w.version
  FROM (
    SELECT s.id, 'swing' AS kind, s.priority_key, s.student_id, s.club, s.lead_fault, s.tally, s.note, s.pain,
      s.pain_seen_at, s.reasons, s.sent_at AS raised_at, s.answer_by, s.claimed_by, s.claim_expires_at, s.handed_by,
      s.handed_why, s.version
    FROM unnest(v_swings) AS p (id) JOIN public.submission s ON s.academy_id = p_academy AND s.id = p.id
    UNION ALL
    SELECT n.id, n.kind, n.priority_key, n.student_id, NULL, NULL, NULL, n.words, n.pain, NULL, n.reasons,
      n.raised_at, n.answer_by, n.claimed_by, n.claim_expires_at, n.handed_by, n.handed_why, n.version
    FROM unnest(v_concerns) AS p (id) JOIN public.concern n ON n.academy_id = p_academy AND n.id = p.id
  ) w
  JOIN public.student t ON t.academy_id = p_academy AND t.id = w.student_id
  JOIN public.membership m ON m.academy_id = p_academy AND m.id = t.membership_id
  LEFT JOIN public.membership h ON h.academy_id = p_academy AND h.id = w.claimed_by AND w.claim_expires_at > p_now
  LEFT JOIN public.membership b ON b.academy_id = p_academy AND b.id = w.handed_by AND h.id IS NOT NULL
  LEFT JOIN LATERAL (
    SELECT (array_agg(k.view ORDER BY k.created_at, k.id))[1] AS view,
      (array_agg(k.swing_length ORDER BY k.created_at, k.id))[1] AS swing_length,
      (array_agg(k.id ORDER BY k.created_at, k.id) FILTER (WHERE k.status = 'ready'))[1] AS poster
    FROM public.clip k WHERE k.academy_id = p_academy AND k.submission_id = w.id
  ) c ON true
  LEFT JOIN LATERAL (
    SELECT r.id, r.cause, r.drill_id, r.rung, r.status, (
        SELECT e.verdict FROM public.practice_entry e
        WHERE e.academy_id = p_academy AND e.programme_id = r.id ORDER BY e.at DESC LIMIT 1) AS verdict
    FROM public.programme r WHERE r.academy_id = p_academy AND r.student_id = w.student_id
    ORDER BY r.created_at DESC LIMIT 1
  ) g ON true
  ORDER BY w.priority_key, w.id
  LIMIT p_limit;
END
$$;

-- Takes a waiting submission for a coach, or renews the coach's own claim: lock, look, change, audit, event. One
-- statement, so that the lock is held for as long as the database needs and no longer.
CREATE FUNCTION public.claim_submission(
  p_academy uuid, p_submission uuid, p_membership uuid, p_now timestamptz, p_expires timestamptz, p_audit uuid,
  p_event uuid, p_request text
)
RETURNS text
LANGUAGE plpgsql AS $$
DECLARE
  v_row public.submission;
BEGIN
  PERFORM public.enter_academy(p_academy);
  SELECT * INTO v_row FROM public.submission
  WHERE academy_id = p_academy AND id = p_submission FOR NO KEY UPDATE;
  IF NOT FOUND THEN RETURN 'not-found'; END IF;
  IF v_row.status = 'answered' THEN RETURN 'already-answered'; END IF;
  IF v_row.status <> 'waiting' THEN RETURN 'wrong-state'; END IF;
  IF v_row.claimed_by IS NOT NULL AND v_row.claim_expires_at > p_now THEN
    IF v_row.claimed_by <> p_membership THEN RETURN 'already-claimed'; END IF;
    UPDATE public.submission SET claim_expires_at = greatest(claim_expires_at, p_expires)
    WHERE academy_id = p_academy AND id = p_submission;
    RETURN 'renewed';
  END IF;
  UPDATE public.submission SET claimed_by = p_membership, claimed_at = p_now, claim_expires_at = p_expires,
    handed_by = NULL, handed_why = NULL, version = version + 1
  WHERE academy_id = p_academy AND id = p_submission;
  INSERT INTO public.audit_entry (academy_id, id, at, actor, action, subject, detail, request_id)
  VALUES (p_academy, p_audit, p_now, 'membership:' || p_membership, 'claim-submission', 'submission:' || p_submission,
    '{}', p_request);
  INSERT INTO system.outbox (id, academy_id, kind, payload, created_at)
  VALUES (p_event, p_academy, 'submission.claimed', jsonb_build_object('submissionId', p_submission), p_now);
  RETURN 'claimed';
END
$$;

-- Takes the first row of the inbox that nobody holds, at most of one lead fault: what another transaction is taking
-- at this moment is passed over, so two coaches at once get two rows.
CREATE FUNCTION public.claim_next(
  p_academy uuid, p_membership uuid, p_fault text, p_now timestamptz, p_expires timestamptz, p_audit uuid,
  p_event uuid, p_request text
)
RETURNS TABLE (kind text, id uuid)
LANGUAGE plpgsql AS $$
#variable_conflict use_column
DECLARE
  v_concern public.concern;
  v_swing uuid;
  v_key timestamptz;
BEGIN
  PERFORM public.enter_academy(p_academy);
  IF p_fault IS NULL THEN
    SELECT s.priority_key INTO v_key FROM public.submission s
    WHERE s.academy_id = p_academy AND s.status = 'waiting' AND (s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
    ORDER BY s.priority_key, s.id LIMIT 1;
    SELECT * INTO v_concern FROM public.concern c
    WHERE c.academy_id = p_academy AND c.status = 'waiting' AND (c.claimed_by IS NULL OR c.claim_expires_at <= p_now)
      AND (v_key IS NULL OR c.priority_key <= v_key)
    ORDER BY c.priority_key, c.id LIMIT 1 FOR NO KEY UPDATE SKIP LOCKED;
    IF FOUND THEN
      UPDATE public.concern c SET claimed_by = p_membership, claimed_at = p_now, claim_expires_at = p_expires,
        handed_by = NULL, handed_why = NULL, version = version + 1
      WHERE c.academy_id = p_academy AND c.id = v_concern.id;
      INSERT INTO public.audit_entry (academy_id, id, at, actor, action, subject, detail, request_id)
      VALUES (p_academy, p_audit, p_now, 'membership:' || p_membership, 'claim-concern', 'concern:' || v_concern.id,
        '{"by": "next"}', p_request);
      INSERT INTO system.outbox (id, academy_id, kind, payload, created_at)
      VALUES (p_event, p_academy, 'concern.claimed', jsonb_build_object('concernId', v_concern.id), p_now);
      RETURN QUERY SELECT v_concern.kind, v_concern.id;
      RETURN;
    END IF;
    SELECT s.id INTO v_swing FROM public.submission s
    WHERE s.academy_id = p_academy AND s.status = 'waiting' AND (s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
    ORDER BY s.priority_key, s.id LIMIT 1 FOR NO KEY UPDATE SKIP LOCKED;
  ELSE
    SELECT s.id INTO v_swing FROM public.submission s
    WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.lead_fault = p_fault
      AND (s.claimed_by IS NULL OR s.claim_expires_at <= p_now)
    ORDER BY s.priority_key, s.id LIMIT 1 FOR NO KEY UPDATE SKIP LOCKED;
  END IF;
  IF v_swing IS NULL THEN RETURN; END IF;
  UPDATE public.submission s SET claimed_by = p_membership, claimed_at = p_now, claim_expires_at = p_expires,
    handed_by = NULL, handed_why = NULL, version = version + 1
  WHERE s.academy_id = p_academy AND s.id = v_swing;
  INSERT INTO public.audit_entry (academy_id, id, at, actor, action, subject, detail, request_id)
  VALUES (p_academy, p_audit, p_now, 'membership:' || p_membership, 'claim-submission', 'submission:' || v_swing,
    '{"by": "next"}', p_request);
  INSERT INTO system.outbox (id, academy_id, kind, payload, created_at)
  VALUES (p_event, p_academy, 'submission.claimed', jsonb_build_object('submissionId', v_swing), p_now);
  RETURN QUERY SELECT 'swing', v_swing;
END
$$;

-- What the academy has promised for so far and what it could still answer: counts up to p_most, so that a long list
-- costs no more than a short one.
CREATE FUNCTION public.inbox_load(p_academy uuid, p_now timestamptz, p_until timestamptz, p_most integer)
RETURNS TABLE (late integer, due integer, coaches integer)
LANGUAGE plpgsql AS $$
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN QUERY SELECT
    (SELECT count(*)::integer FROM (SELECT FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.answer_by <= p_now LIMIT p_most) l),
    (SELECT count(*)::integer FROM (SELECT FROM public.submission s
      WHERE s.academy_id = p_academy AND s.status = 'waiting' AND s.answer_by > p_now AND s.answer_by < p_until
      LIMIT p_most) d),
    (SELECT count(*)::integer FROM public.membership m
      WHERE m.academy_id = p_academy AND m.role = 'coach' AND m.ended_at IS NULL);
END
$$;

GRANT EXECUTE ON FUNCTION
  public.inbox_claim_fits(text, uuid, timestamptz, timestamptz), public.inbox_kind_fits(text, text, timestamptz),
  public.inbox_page(uuid, integer, timestamptz, uuid, text, text, text, text, timestamptz),
  public.claim_submission(uuid, uuid, uuid, timestamptz, timestamptz, uuid, uuid, text),
  public.claim_next(uuid, uuid, text, timestamptz, timestamptz, uuid, uuid, text),
  public.inbox_load(uuid, timestamptz, timestamptz, integer)
TO app;
