-- The academy's own collection of model swings, and the talk-through that goes with a reply.
-- Locks: clip, submission and membership shared for the foreign keys, milliseconds; both tables are new and empty.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE public.model_swing (
  academy_id uuid NOT NULL,
  id uuid NOT NULL,
  clip_id uuid NOT NULL,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  -- Who allowed it, how and for what: without it nothing enters the collection.
  permission text NOT NULL CHECK (length(permission) BETWEEN 10 AND 400),
  permitted_on date NOT NULL,
  by_membership uuid NOT NULL,
  kept_at timestamptz(3) NOT NULL,
  ended_at timestamptz(3),
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, clip_id) REFERENCES public.clip (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE
);
-- A clip is in the collection once; taken out, it may come in again.
CREATE UNIQUE INDEX model_swing_kept_once ON public.model_swing (academy_id, clip_id) WHERE ended_at IS NULL;
ALTER TABLE public.model_swing ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.model_swing FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.model_swing TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.model_swing TO app;
GRANT UPDATE (ended_at) ON public.model_swing TO app;

CREATE TABLE public.talk_through (
  academy_id uuid NOT NULL,
  id uuid NOT NULL,
  submission_id uuid NOT NULL,
  clip_id uuid NOT NULL,
  by_membership uuid NOT NULL,
  kind text NOT NULL CHECK (kind IN ('audio/webm', 'audio/mp4', 'audio/ogg')),
  duration_ms integer NOT NULL CHECK (duration_ms BETWEEN 1 AND 181000),
  track jsonb NOT NULL,
  captions jsonb NOT NULL,
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, clip_id) REFERENCES public.clip (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE UNIQUE INDEX talk_through_academy_id_submission_id_key ON public.talk_through (academy_id, submission_id);
ALTER TABLE public.talk_through ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.talk_through FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.talk_through TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT, DELETE ON public.talk_through TO app;
GRANT UPDATE (captions) ON public.talk_through TO app;
