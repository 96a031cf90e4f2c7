-- Reminders to students: looked for once a local day, one message a day at most, each about one thing once, off by one click.
-- Locks: student and academy wholly while columns are added (no rewrite: no default, or a constant one), milliseconds;
-- the index on student is built against writes, a fraction of a second for each hundred thousand students.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE public.nudge (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  kind text NOT NULL,
  -- What it is about; the same reminder about the same thing is sent once.
  subject text NOT NULL,
  -- The student's own calendar day.
  local_date text NOT NULL,
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT nudge_kind CHECK (kind IN
    ('trial-ending', 'check-in-reminder', 'film-again', 'reply-unread', 'first-swing', 'practice')),
  CONSTRAINT nudge_local_date CHECK (local_date ~ '^\d{4}-\d{2}-\d{2}$')
);
CREATE UNIQUE INDEX nudge_academy_id_student_id_kind_subject_key
  ON public.nudge (academy_id, student_id, kind, subject);
CREATE UNIQUE INDEX nudge_academy_id_student_id_local_date_key
  ON public.nudge (academy_id, student_id, local_date);
ALTER TABLE public.nudge ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.nudge FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.nudge TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.nudge TO app;

ALTER TABLE public.academy
  ADD COLUMN nudges_off text[] NOT NULL DEFAULT '{}',
  ADD CONSTRAINT academy_nudges_off CHECK (nudges_off <@ ARRAY
    ['trial-ending', 'check-in-reminder', 'film-again', 'reply-unread', 'first-swing', 'practice']);
GRANT UPDATE (nudges_off) ON public.academy TO app;

ALTER TABLE public.student
  ADD COLUMN look_after_at timestamptz(3),
  ADD COLUMN nudges_off_at timestamptz(3),
  -- Stands in every letter and does nothing but end reminders: kept as it is, so that old letters' links still work.
  ADD COLUMN stop_token text UNIQUE CHECK (length(stop_token) = 43);
GRANT UPDATE (look_after_at, nudges_off_at, stop_token) ON public.student TO app;
CREATE INDEX student_look_after ON public.student (look_after_at NULLS FIRST)
  WHERE standing IN ('trial', 'paid');

GRANT SELECT (look_after_at, stop_token) ON public.student TO crossing;
GRANT UPDATE (nudges_off_at) ON public.student TO crossing;
CREATE POLICY students_who_stop_reminders ON public.student FOR UPDATE TO crossing USING (true) WITH CHECK (true);

-- Students whose daily look has come due; one without an hour yet is given one.
CREATE FUNCTION crossing.due_look_afters(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "studentId" uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id FROM public.student
  WHERE standing IN ('trial', 'paid') AND (look_after_at IS NULL OR look_after_at <= p_now)
  ORDER BY look_after_at NULLS FIRST, id LIMIT p_limit
$$;

-- Ends the reminders of whoever follows the link of a letter; true where the link is known, each time.
CREATE FUNCTION crossing.stop_nudges(p_token text, p_now timestamptz)
RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH stopped AS (
    UPDATE public.student SET nudges_off_at = p_now WHERE stop_token = p_token RETURNING 1
  )
  SELECT EXISTS (SELECT FROM stopped)
$$;

GRANT EXECUTE ON FUNCTION
  crossing.due_look_afters(timestamptz, integer),
  crossing.stop_nudges(text, timestamptz)
TO app;
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.due_look_afters(timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.stop_nudges(text, timestamptz) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
