-- The second drill of a programme is practised and logged like the first: its own step and its own exaggeration (null: not
-- begun, or no second drill), and of each entry whether it was of the second.
-- Locks: programme and practice_entry wholly while columns are added (the default is a constant, no rewrite), milliseconds;
-- the checks read the tables once.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.programme
  ADD COLUMN second_rung text,
  ADD COLUMN second_exaggeration text,
  ADD CONSTRAINT programme_second_rung
    CHECK (second_rung IN ('rehearsal', 'brush', 'hip-high', 'three-quarter', 'full', 'transfer')),
  ADD CONSTRAINT programme_second_exaggeration CHECK (second_exaggeration IN ('mild', 'firm', 'strong')),
  ADD CONSTRAINT programme_second_progress
    CHECK (second_drill_id IS NOT NULL OR (second_rung IS NULL AND second_exaggeration IS NULL));
GRANT UPDATE (second_rung, second_exaggeration) ON public.programme TO app;

ALTER TABLE public.practice_entry ADD COLUMN second boolean NOT NULL DEFAULT false;

-- The programme a student works on, with the last ten entries, newest first; null when there is none.
CREATE OR REPLACE FUNCTION public.programme_document(p_academy uuid, p_student uuid) RETURNS json
LANGUAGE sql STABLE AS $$
  SELECT json_build_object(
    'id', p.id, 'submissionId', p.submission_id, 'cause', p.cause, 'drillId', p.drill_id,
    'drillVersion', p.drill_version, 'exaggeration', p.exaggeration, 'place', p.place,
    'weeklyMinutes', p.weekly_minutes, 'secondDrillId', p.second_drill_id, 'rung', p.rung, 'status', p.status, 'holdReason', p.hold_reason,
    'createdAt', public.instant_text(p.created_at),
    'entries', (SELECT coalesce(json_agg(json_build_object('id', e.id,
        'drillId', CASE WHEN e.second THEN p.second_drill_id ELSE p.drill_id END, 'rung', e.rung, 'balls', e.balls,
        'clean', e.clean, 'filmed', e.filmed, 'pain', e.pain, 'localDate', e.local_date,
        'at', public.instant_text(e.at), 'verdict', e.verdict) ORDER BY e.at DESC, e.id DESC), '[]'::json)
      FROM (SELECT * FROM public.practice_entry WHERE academy_id = p_academy AND programme_id = p.id
        ORDER BY at DESC, id DESC LIMIT 10) e)
  )
  FROM public.programme p
  WHERE p.academy_id = p_academy AND p.student_id = p_student AND p.status IN ('open', 'held')
$$;

-- What the inbox tells of a programme's step is told of the entries of that drill.
CREATE OR REPLACE FUNCTION public.inbox_student(p_academy uuid, p_student uuid)
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
        WHERE e.academy_id = p_academy AND e.programme_id = r.id AND NOT e.second
        ORDER BY e.at DESC LIMIT 1) AS verdict
    FROM public.programme r WHERE r.academy_id = p_academy AND r.student_id = p_student
    ORDER BY r.created_at DESC LIMIT 1
  ) g ON true
  WHERE o.academy_id = p_academy AND o.id = p_student LIMIT 1
$$;
