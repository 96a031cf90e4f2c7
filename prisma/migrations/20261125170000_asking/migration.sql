-- What a student asks: a question back about a reply, and to join when the trial is over.
-- Locks: student wholly while a column is added (no rewrite), milliseconds; the new table is empty.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE public.question (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  reply_id uuid NOT NULL,
  by_membership uuid NOT NULL,
  -- Who speaks: what the student asks, what a coach answers.
  voice text NOT NULL CHECK (voice IN ('student', 'coach')),
  words text NOT NULL CHECK (length(words) BETWEEN 1 AND 1000),
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, student_id) REFERENCES public.student (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, reply_id) REFERENCES public.reply (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX question_academy_id_reply_id_at_idx ON public.question (academy_id, reply_id, at);
ALTER TABLE public.question ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.question FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.question TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.question TO app;

ALTER TABLE public.student ADD COLUMN join_asked_at timestamptz(3);
GRANT UPDATE (join_asked_at) ON public.student TO app;
