-- A guardian's consent with its history: who, which text, which purposes, how, and its withdrawal; and what a student says
-- about the body, with its own permission.
-- Locks: student against everything while two columns without default are added: milliseconds; the table is new.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE public.guardian_consent (
  academy_id uuid NOT NULL,
  id uuid NOT NULL,
  student_id uuid NOT NULL,
  guardian_name text NOT NULL CHECK (length(guardian_name) BETWEEN 1 AND 120),
  guardian_email text NOT NULL CHECK (guardian_email = lower(guardian_email)),
  relation text NOT NULL,
  token_hash bytea,
  text_version text,
  quality boolean NOT NULL,
  teaching boolean NOT NULL,
  evidence text,
  asked_at timestamptz(3) NOT NULL,
  given_at timestamptz(3),
  withdrawn_at timestamptz(3),
  CONSTRAINT guardian_consent_pkey PRIMARY KEY (academy_id, id),
  CONSTRAINT guardian_consent_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id)
    REFERENCES public.student (academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE,
  CONSTRAINT guardian_consent_token_hash_length CHECK (octet_length(token_hash) = 32),
  CONSTRAINT guardian_consent_evidence CHECK (evidence IN ('beside', 'link', 'letter')),
  -- Given means: to a text, in a way that is written down.
  CONSTRAINT guardian_consent_given CHECK (given_at IS NULL OR (text_version IS NOT NULL AND evidence IS NOT NULL))
);
CREATE UNIQUE INDEX guardian_consent_academy_id_token_hash_key ON public.guardian_consent (academy_id, token_hash);
CREATE INDEX guardian_consent_academy_id_student_id_asked_at_idx
  ON public.guardian_consent (academy_id, student_id, asked_at);
ALTER TABLE public.guardian_consent ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.guardian_consent FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.guardian_consent TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.guardian_consent TO app;
GRANT UPDATE (token_hash, text_version, quality, teaching, evidence, given_at, withdrawn_at)
  ON public.guardian_consent TO app;

ALTER TABLE public.student
  ADD COLUMN body_note text,
  ADD COLUMN body_agreed_at timestamptz(3),
  ADD CONSTRAINT student_body_note_agreed CHECK (body_note IS NULL OR body_agreed_at IS NOT NULL);
GRANT UPDATE (body_note, body_agreed_at) ON public.student TO app;
