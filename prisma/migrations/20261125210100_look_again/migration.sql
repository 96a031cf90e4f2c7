-- Clips that were prepared before the machine looked where to begin: the worker looks again.
-- Locks: clip against writes for the seconds of one scan while the partial index is built.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE INDEX clip_not_looked_at ON public.clip (created_at DESC) WHERE status = 'ready' AND suggestion IS NULL;
GRANT SELECT (suggestion) ON public.clip TO crossing;

CREATE FUNCTION crossing.clips_not_looked_at(p_limit integer)
RETURNS TABLE ("academyId" uuid, "clipId" uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id FROM public.clip
  WHERE status = 'ready' AND suggestion IS NULL ORDER BY created_at DESC, id LIMIT p_limit
$$;

GRANT EXECUTE ON FUNCTION crossing.clips_not_looked_at(integer) TO app;
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.clips_not_looked_at(integer) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
