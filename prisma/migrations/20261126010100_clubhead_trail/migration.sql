-- The clubhead on one frame after another near the ball is kept with the marks of its clip, under their version: what the
-- lowest point of the arc is read from.
-- Locks: clip wholly while a column is added (the default is a constant, no rewrite), milliseconds; the check reads it once.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.clip
  ADD COLUMN trail jsonb NOT NULL DEFAULT '[]',
  ADD CONSTRAINT clip_trail CHECK (jsonb_typeof(trail) = 'array' AND jsonb_array_length(trail) <= 200);
GRANT UPDATE (trail) ON public.clip TO app;

-- As before, with the trail.
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
    'trail', c.trail,
    'observations', (SELECT coalesce(json_agg(json_build_object('key', o.key, 'answer', o.answer) ORDER BY o.key),
        '[]'::json)
      FROM public.observation o WHERE o.academy_id = p_academy AND o.clip_id = c.id)
  ) ORDER BY c.created_at, c.id), '[]'::json)
  FROM public.clip c WHERE c.academy_id = p_academy AND c.submission_id = p_submission
$$;
