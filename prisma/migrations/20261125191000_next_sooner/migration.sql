-- Next for me walks along the swings once where no concern is free, which is nearly always.
-- Locks: none beyond the catalog.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- Takes the first row of the inbox that nobody holds, at most of one lead fault: what another transaction is taking
-- at this moment is passed over, so two coaches at once get two rows.
CREATE OR REPLACE FUNCTION public.claim_next(
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
  IF p_fault IS NULL AND EXISTS (
    SELECT FROM public.concern c
    WHERE c.academy_id = p_academy AND c.status = 'waiting' AND (c.claimed_by IS NULL OR c.claim_expires_at <= p_now)
  ) THEN
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
  END IF;
  IF p_fault IS NULL THEN
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
