-- What is suggested from the sound and the movement of a clip; pictures of sent replies with their marks in them; clips
-- whose consent was withdrawn, which are closed at once and whose files are removed.
-- Locks: clip and reply wholly while nullable columns and a check change (no table is rewritten); the check is added
-- unvalidated, then validated in a scan that lets writes through. Both indexes are partial and nearly empty at first, but
-- are built in a scan that holds writes back for seconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.clip
  ADD COLUMN suggestion jsonb,
  ADD COLUMN erase_at timestamptz(3),
  ADD COLUMN erased_at timestamptz(3),
  DROP CONSTRAINT clip_status,
  ADD CONSTRAINT clip_status
    CHECK (status IN ('uploading', 'uploaded', 'preparing', 'ready', 'refused', 'expired', 'erased')) NOT VALID,
  ADD CONSTRAINT clip_erased CHECK (erased_at IS NULL OR (status = 'erased' AND erase_at IS NOT NULL)) NOT VALID;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_status;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_erased;
GRANT UPDATE (suggestion, erase_at, erased_at) ON public.clip TO app;
CREATE INDEX clip_to_erase ON public.clip (erase_at) WHERE erase_at IS NOT NULL AND erased_at IS NULL;
GRANT SELECT (erase_at, erased_at) ON public.clip TO crossing;

ALTER TABLE public.reply ADD COLUMN stills_version integer;
GRANT UPDATE (stills_version) ON public.reply TO app;
CREATE INDEX reply_without_stills ON public.reply (sent_at DESC)
  WHERE status = 'sent' AND stills_version IS DISTINCT FROM version AND frames <> '[]'::jsonb;
GRANT SELECT (version, sent_at, frames, stills_version) ON public.reply TO crossing;

-- Clips whose files must go.
CREATE FUNCTION crossing.clips_to_erase(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "clipId" uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id FROM public.clip
  WHERE erase_at <= p_now AND erased_at IS NULL ORDER BY erase_at, id LIMIT p_limit
$$;

-- Sent replies whose pictures were never made, or were made of an earlier version.
CREATE FUNCTION crossing.replies_without_stills(p_limit integer)
RETURNS TABLE ("academyId" uuid, "replyId" uuid, version integer)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id, version FROM public.reply
  WHERE status = 'sent' AND stills_version IS DISTINCT FROM version AND frames <> '[]'::jsonb
  ORDER BY sent_at DESC, id LIMIT p_limit
$$;

GRANT EXECUTE ON FUNCTION
  crossing.clips_to_erase(timestamptz, integer),
  crossing.replies_without_stills(integer)
TO app;
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.clips_to_erase(timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.replies_without_stills(integer) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;

-- A clip with its marks and observations, now with what is suggested.
CREATE OR REPLACE FUNCTION public.clips_document(p_academy uuid, p_submission uuid) RETURNS json
LANGUAGE sql STABLE AS $$
  SELECT coalesce(json_agg(json_build_object(
    'id', c.id, 'fileName', c.file_name, 'view', c.view, 'swingLength', c.swing_length, 'status', c.status,
    'lengthBytes', c.length_bytes, 'createdAt', public.instant_text(c.created_at), 'percent', c.percent,
    'refusal', c.refusal, 'widthPx', c.width_px, 'heightPx', c.height_px, 'frames', c.frames, 'fps', c.fps, 'durationMs', c.duration_ms, 'marksVersion', c.marks_version,
    'suggestion', c.suggestion,
    'marks', (SELECT coalesce(json_agg(json_build_object('position', m.position, 'point', m.point, 'frame', m.frame,
        'x', m.x, 'y', m.y, 'source', m.source) ORDER BY m.frame, m.position, m.point), '[]'::json)
      FROM public.mark m WHERE m.academy_id = p_academy AND m.clip_id = c.id),
    'observations', (SELECT coalesce(json_agg(json_build_object('key', o.key, 'answer', o.answer) ORDER BY o.key),
        '[]'::json)
      FROM public.observation o WHERE o.academy_id = p_academy AND o.clip_id = c.id)
  ) ORDER BY c.created_at, c.id), '[]'::json)
  FROM public.clip c WHERE c.academy_id = p_academy AND c.submission_id = p_submission
$$;
