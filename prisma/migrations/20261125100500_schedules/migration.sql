-- What the worker must find across academies: events to relay and what has come due. Ids only; the work itself is done
-- inside each academy. Locks: none beyond the catalog and, for the policies, each table for milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

GRANT SELECT, UPDATE (taken_at, sent_at) ON system.outbox TO crossing;
GRANT SELECT (academy_id, id, student_id, status, due_at) ON public.check_in TO crossing;
GRANT SELECT (academy_id, id, status, claimed_by, claim_expires_at) ON public.submission TO crossing;
GRANT SELECT (academy_id, id, status, fence, started_at, created_at, expires_at) ON public.clip TO crossing;
CREATE POLICY events_for_the_relay ON system.outbox TO crossing USING (true) WITH CHECK (true);
CREATE POLICY check_ins_for_schedules ON public.check_in FOR SELECT TO crossing USING (true);
CREATE POLICY submissions_for_lapsing_claims ON public.submission FOR SELECT TO crossing USING (true);
CREATE POLICY clips_for_the_reconciler ON public.clip FOR SELECT TO crossing USING (true);

-- Every academy, oldest first: schedules and roll-ups go through them one by one.
CREATE FUNCTION crossing.list_academies()
RETURNS TABLE (id uuid, slug text, name text, zone text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT id, slug, name, zone FROM public.academy ORDER BY created_at, id
$$;

-- Unsent events for the relay; those another relay holds are passed over, those it lost are taken again.
CREATE FUNCTION crossing.take_outbox(p_limit integer, p_now timestamptz, p_retake_after_seconds integer)
RETURNS TABLE (id uuid, "academyId" uuid, kind text, payload jsonb, "createdAt" timestamptz)
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH due AS (
    SELECT o.id FROM system.outbox o
    WHERE o.sent_at IS NULL
      AND (o.taken_at IS NULL OR o.taken_at <= p_now - make_interval(secs => p_retake_after_seconds))
    ORDER BY o.created_at, o.id LIMIT p_limit
    FOR UPDATE SKIP LOCKED
  ), taken AS (
    UPDATE system.outbox o SET taken_at = p_now FROM due WHERE o.id = due.id
    RETURNING o.id, o.academy_id, o.kind, o.payload, o.created_at
  )
  SELECT t.id, t.academy_id, t.kind, t.payload, t.created_at FROM taken t ORDER BY t.created_at, t.id
$$;

-- Events handed to the queue.
CREATE FUNCTION crossing.mark_outbox_sent(p_ids uuid[], p_now timestamptz)
RETURNS integer
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH marked AS (
    UPDATE system.outbox SET sent_at = p_now WHERE id = ANY (p_ids) AND sent_at IS NULL RETURNING 1
  )
  SELECT count(*)::integer FROM marked
$$;

-- Check-ins whose instant has come.
CREATE FUNCTION crossing.due_check_ins(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "checkInId" uuid, "studentId" uuid, "dueAt" timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, student_id, due_at FROM public.check_in
  WHERE status = 'scheduled' AND due_at <= p_now ORDER BY due_at, id LIMIT p_limit
$$;

-- Trials that are over.
CREATE FUNCTION crossing.due_trial_ends(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "studentId" uuid, "trialEndsAt" timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, trial_ends_at FROM public.student
  WHERE standing = 'trial' AND trial_ends_at <= p_now ORDER BY trial_ends_at, id LIMIT p_limit
$$;

-- Claims left alone past their end.
CREATE FUNCTION crossing.lapsed_claims(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "submissionId" uuid, "claimedBy" uuid, "claimExpiresAt" timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, claimed_by, claim_expires_at FROM public.submission
  WHERE status = 'waiting' AND claimed_by IS NOT NULL AND claim_expires_at <= p_now
  ORDER BY claim_expires_at, id LIMIT p_limit
$$;

-- Clips whose preparing was lost, for the reconciler.
CREATE FUNCTION crossing.unprepared_clips(p_now timestamptz, p_older_than_seconds integer, p_limit integer)
RETURNS TABLE ("academyId" uuid, "clipId" uuid, status text, fence integer)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, status, fence FROM public.clip
  WHERE status IN ('uploaded', 'preparing')
    AND coalesce(started_at, created_at) <= p_now - make_interval(secs => p_older_than_seconds)
  ORDER BY created_at, id LIMIT p_limit
$$;

-- Uploads given up by their senders.
CREATE FUNCTION crossing.expired_uploads(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "clipId" uuid, "expiresAt" timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, expires_at FROM public.clip
  WHERE status = 'uploading' AND expires_at <= p_now ORDER BY expires_at, id LIMIT p_limit
$$;

GRANT EXECUTE ON FUNCTION
  crossing.list_academies(),
  crossing.take_outbox(integer, timestamptz, integer),
  crossing.mark_outbox_sent(uuid[], timestamptz),
  crossing.due_check_ins(timestamptz, integer),
  crossing.due_trial_ends(timestamptz, integer),
  crossing.lapsed_claims(timestamptz, integer),
  crossing.unprepared_clips(timestamptz, integer, integer),
  crossing.expired_uploads(timestamptz, integer)
TO app;

-- From here on they run as `crossing`, which may make functions only for this moment.
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.list_academies() OWNER TO crossing;
ALTER FUNCTION crossing.take_outbox(integer, timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.mark_outbox_sent(uuid[], timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.due_check_ins(timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.due_trial_ends(timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.lapsed_claims(timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.unprepared_clips(timestamptz, integer, integer) OWNER TO crossing;
ALTER FUNCTION crossing.expired_uploads(timestamptz, integer) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
