-- The next row with its Idempotency-Key in one statement: fifty coaches at once wait for one round trip each, not seven.
-- Locks: none beyond the catalog.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- As services/once.ts does it for other verbs: the key's row comes first, the same key at the same time waits on the
-- index and then reads the answer that is stored. The outcome is new, stored or otherwise (another request's key).
CREATE FUNCTION public.claim_next_once(
  p_academy uuid, p_membership uuid, p_fault text, p_now timestamptz, p_expires timestamptz, p_audit uuid,
  p_event uuid, p_request text, p_owner text, p_key text, p_hash text
)
RETURNS TABLE (outcome text, body text)
LANGUAGE plpgsql AS $$
#variable_conflict use_column
DECLARE
  v_body text;
BEGIN
  PERFORM public.enter_academy(p_academy);
  INSERT INTO public.idempotency (academy_id, owner, key, request_hash, status, body, at)
  VALUES (p_academy, p_owner, p_key, p_hash, 200, '', p_now) ON CONFLICT DO NOTHING;
  IF NOT FOUND THEN
    RETURN QUERY SELECT CASE WHEN i.request_hash = p_hash THEN 'stored' ELSE 'otherwise' END, i.body
    FROM public.idempotency i WHERE i.academy_id = p_academy AND i.owner = p_owner AND i.key = p_key;
    RETURN;
  END IF;
  SELECT json_build_object('taken', CASE WHEN n.id IS NOT NULL THEN
    json_build_object('kind', n.kind, 'id', n.id) END)::text INTO v_body
  FROM (SELECT) one
  LEFT JOIN public.claim_next(p_academy, p_membership, p_fault, p_now, p_expires, p_audit, p_event, p_request) n
    ON true;
  UPDATE public.idempotency i SET body = v_body
  WHERE i.academy_id = p_academy AND i.owner = p_owner AND i.key = p_key;
  RETURN QUERY SELECT 'new', v_body;
END
$$;

GRANT EXECUTE ON FUNCTION
  public.claim_next_once(uuid, uuid, text, timestamptz, timestamptz, uuid, uuid, text, text, text, text)
TO app;
