-- The audit chain: each sealed row holds the hash of the one before it and its own, SHA-256 (FIPS 180-4).
-- Locks: none beyond the catalog and, for the policies, audit_entry for milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- What the first row of a chain follows: 32 zero bytes.
CREATE FUNCTION public.audit_root() RETURNS bytea
LANGUAGE sql IMMUTABLE
RETURN decode(repeat('00', 32), 'hex');

-- The hash of a row: over the hash before it and the row as one JSON array, the instant as whole milliseconds.
CREATE FUNCTION public.audit_hash(
  p_prev bytea, p_seq bigint, p_academy uuid, p_id uuid, p_at timestamptz, p_actor text, p_action text,
  p_subject text, p_detail jsonb, p_request_id text
) RETURNS bytea
LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp
RETURN sha256(p_prev || convert_to(jsonb_build_array(
  p_seq, p_academy::text, p_id::text, trunc(extract(epoch FROM p_at) * 1000), p_actor, p_action, p_subject, p_detail,
  p_request_id)::text, 'UTF8'));

-- Walks the chain of one academy from its first row; sets the tenant for its own statement.
CREATE FUNCTION public.verify_audit(p_academy uuid)
RETURNS TABLE (whole boolean, sealed integer, unsealed integer, "oldestUnsealedAt" timestamptz,
  "firstBadSeq" bigint, "headHash" text)
LANGUAGE plpgsql AS $$
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN QUERY
  WITH chain AS (
    SELECT e.seq, e.hash,
      e.seq = row_number() OVER (ORDER BY e.seq)
      AND e.prev_hash = lag(e.hash, 1, public.audit_root()) OVER (ORDER BY e.seq)
      AND e.hash = public.audit_hash(e.prev_hash, e.seq, e.academy_id, e.id, e.at, e.actor, e.action, e.subject,
        e.detail, e.request_id) AS good
    FROM public.audit_entry e WHERE e.academy_id = p_academy AND e.seq IS NOT NULL
  ), waiting AS (
    SELECT count(*)::integer AS rows, min(e.at)::timestamptz AS oldest
    FROM public.audit_entry e WHERE e.academy_id = p_academy AND e.seq IS NULL
  )
  SELECT coalesce(bool_and(c.good), true), count(c.seq)::integer, w.rows, w.oldest,
    min(c.seq) FILTER (WHERE NOT c.good), encode((array_agg(c.hash ORDER BY c.seq DESC))[1], 'hex')
  FROM waiting w LEFT JOIN chain c ON true
  GROUP BY w.rows, w.oldest;
END
$$;
GRANT EXECUTE ON FUNCTION public.audit_root(), public.verify_audit(uuid),
  public.audit_hash(bytea, bigint, uuid, uuid, timestamptz, text, text, text, jsonb, text) TO app;
GRANT EXECUTE ON FUNCTION public.audit_root(),
  public.audit_hash(bytea, bigint, uuid, uuid, timestamptz, text, text, text, jsonb, text) TO crossing;

GRANT SELECT, UPDATE (seq, prev_hash, hash, sealed_at) ON public.audit_entry TO crossing;
CREATE POLICY entries_for_sealing ON public.audit_entry FOR SELECT TO crossing USING (true);
-- A sealed row is closed to everyone, the sealer too.
CREATE POLICY sealing_once ON public.audit_entry FOR UPDATE TO crossing USING (seq IS NULL) WITH CHECK (seq IS NOT NULL);

-- The academies with rows to seal.
CREATE FUNCTION crossing.academies_to_seal(p_now timestamptz)
RETURNS TABLE (academy_id uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT DISTINCT e.academy_id FROM public.audit_entry e WHERE e.seq IS NULL AND e.at <= p_now ORDER BY 1
$$;

-- Numbers and chains the unsealed rows of one academy. Only rows of transactions older than the oldest still running are
-- taken, in the order of their transaction ids: whatever commits later comes later in the chain. age() orders ids rightly
-- when they wrap around.
CREATE FUNCTION crossing.seal_audit(p_academy uuid, p_now timestamptz)
RETURNS TABLE (sealed integer, "headSeq" bigint, "headHash" text)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  v_seq bigint;
  v_hash bytea;
  v_sealed integer := 0;
  v_horizon xid;
  v_entry record;
BEGIN
  PERFORM pg_advisory_xact_lock(72707371, hashtext(p_academy::text));
  v_horizon := pg_snapshot_xmin(pg_current_snapshot())::xid;
  SELECT e.seq, e.hash INTO v_seq, v_hash FROM public.audit_entry e
    WHERE e.academy_id = p_academy AND e.seq IS NOT NULL ORDER BY e.seq DESC LIMIT 1;
  v_seq := coalesce(v_seq, 0);
  v_hash := coalesce(v_hash, public.audit_root());
  FOR v_entry IN
    SELECT e.* FROM public.audit_entry e
    WHERE e.academy_id = p_academy AND e.seq IS NULL AND age(e.xmin) > age(v_horizon)
    ORDER BY age(e.xmin) DESC, e.id
  LOOP
    v_seq := v_seq + 1;
    UPDATE public.audit_entry e SET seq = v_seq, prev_hash = v_hash, sealed_at = p_now,
      hash = public.audit_hash(v_hash, v_seq, v_entry.academy_id, v_entry.id, v_entry.at, v_entry.actor,
        v_entry.action, v_entry.subject, v_entry.detail, v_entry.request_id)
    WHERE e.academy_id = p_academy AND e.id = v_entry.id
    RETURNING e.hash INTO v_hash;
    v_sealed := v_sealed + 1;
  END LOOP;
  RETURN QUERY SELECT v_sealed, v_seq, CASE WHEN v_seq = 0 THEN NULL ELSE encode(v_hash, 'hex') END;
END
$$;

GRANT EXECUTE ON FUNCTION
  crossing.academies_to_seal(timestamptz),
  crossing.seal_audit(uuid, timestamptz)
TO app;

-- From here on they run as `crossing`, which may make functions only for this moment.
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.academies_to_seal(timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.seal_audit(uuid, timestamptz) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
