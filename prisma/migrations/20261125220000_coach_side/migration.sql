-- Around the lesson: a coach's private note about a student, lessons given in person, line tests, a teaching clip for a
-- cause, the hours in which a student is not written to, and what went wrong this week as one read.
-- Locks: student wholly while two columns are added (no rewrite), milliseconds; submission against writes while an index
-- is built (one pass, about a second for each million rows); the new tables are empty.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '300s';

-- One private note about each student, for coaches only.
CREATE TABLE public.coach_note (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  student_id uuid NOT NULL,
  words text NOT NULL,
  version integer NOT NULL,
  by_membership uuid NOT NULL,
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, student_id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT coach_note_words CHECK (length(words) <= 4000),
  CONSTRAINT coach_note_version CHECK (version > 0)
);
ALTER TABLE public.coach_note ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.coach_note FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.coach_note TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.coach_note TO app;
GRANT UPDATE (words, version, by_membership, at) ON public.coach_note TO app;

-- A lesson that was given in person, noted by a coach.
CREATE TABLE public.lesson (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  by_membership uuid NOT NULL,
  -- The calendar day it was given on, where the student is.
  local_date text NOT NULL,
  words text NOT NULL,
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT lesson_local_date CHECK (local_date ~ '^\d{4}-\d{2}-\d{2}$'),
  CONSTRAINT lesson_words CHECK (length(words) BETWEEN 1 AND 1000)
);
CREATE INDEX lesson_academy_id_student_id_at_idx ON public.lesson (academy_id, student_id, at);
ALTER TABLE public.lesson ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.lesson FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.lesson TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.lesson TO app;

-- Brushes over a line without a ball: where each began, in mm, + past the line towards the target.
CREATE TABLE public.line_test (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  by_membership uuid NOT NULL,
  starts_mm integer[] NOT NULL,
  local_date text NOT NULL,
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT line_test_starts CHECK (
    cardinality(starts_mm) BETWEEN 3 AND 10 AND array_position(starts_mm, NULL) IS NULL
    AND -1000 <= ALL (starts_mm) AND 1000 >= ALL (starts_mm)),
  CONSTRAINT line_test_local_date CHECK (local_date ~ '^\d{4}-\d{2}-\d{2}$')
);
CREATE INDEX line_test_academy_id_student_id_at_idx ON public.line_test (academy_id, student_id, at);
ALTER TABLE public.line_test ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.line_test FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.line_test TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.line_test TO app;

-- The address of a film that explains a cause. One that was taken away keeps its row.
CREATE TABLE public.teaching_clip (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  cause text NOT NULL,
  title text NOT NULL,
  url text NOT NULL,
  by_membership uuid NOT NULL,
  at timestamptz(3) NOT NULL,
  removed_at timestamptz(3),
  PRIMARY KEY (academy_id, cause),
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT teaching_clip_title CHECK (length(title) BETWEEN 1 AND 120),
  CONSTRAINT teaching_clip_url CHECK (url LIKE 'https://%' AND length(url) <= 500)
);
ALTER TABLE public.teaching_clip ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.teaching_clip FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.teaching_clip TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.teaching_clip TO app;
GRANT UPDATE (title, url, by_membership, at, removed_at) ON public.teaching_clip TO app;

-- Wall-clock times, null together; they may run over midnight.
ALTER TABLE public.student
  ADD COLUMN quiet_from text,
  ADD COLUMN quiet_to text,
  ADD CONSTRAINT student_quiet CHECK (
    (quiet_from IS NULL) = (quiet_to IS NULL)
    AND quiet_from ~ '^([01]\d|2[0-3]):[0-5]\d$' AND quiet_to ~ '^([01]\d|2[0-3]):[0-5]\d$') NOT VALID;
ALTER TABLE public.student VALIDATE CONSTRAINT student_quiet;
GRANT UPDATE (quiet_from, quiet_to) ON public.student TO app;

CREATE INDEX submission_academy_id_sent_at_idx ON public.submission (academy_id, sent_at);

-- Faults told and causes answered by swings and by students, over seven days, thirty, and the days before the seven.
-- A row without a key is the sum of its kind; a student counts once in it, whatever was sent.
CREATE FUNCTION public.faults_lately(p_academy uuid, p_now timestamptz)
RETURNS TABLE (span text, kind text, key text, swings integer, students integer)
LANGUAGE plpgsql AS $$
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN QUERY
    SELECT w.name, t.kind, t.key, count(*)::integer, count(DISTINCT s.student_id)::integer
    FROM public.submission s
    LEFT JOIN public.reply r ON r.academy_id = p_academy AND r.submission_id = s.id AND r.status = 'sent'
    CROSS JOIN LATERAL (VALUES
      ('month', true),
      ('week', s.sent_at > p_now - interval '7 days'),
      ('before', s.sent_at <= p_now - interval '7 days')) AS w (name, inside)
    CROSS JOIN LATERAL (VALUES
      ('fault', NULLIF(s.lead_fault, 'solid')), ('cause', r.cause)) AS t (kind, key)
    WHERE s.academy_id = p_academy AND s.sent_at > p_now - interval '30 days' AND s.sent_at <= p_now
      AND s.status <> 'withdrawn' AND w.inside AND t.key IS NOT NULL
    GROUP BY GROUPING SETS ((w.name, t.kind, t.key), (w.name, t.kind));
END
$$;
REVOKE ALL ON FUNCTION public.faults_lately(uuid, timestamptz) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION public.faults_lately(uuid, timestamptz) TO app;
