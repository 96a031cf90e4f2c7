-- Submissions, clips and what is marked, measured, answered, practised and followed up.
-- Locks: new tables only; foreign keys lock membership and student against writes for milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE public.submission (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  status TEXT NOT NULL,
  club TEXT NOT NULL,
  lie TEXT NOT NULL,
  tally JSONB NOT NULL,
  lead_fault TEXT,
  start_line TEXT NOT NULL,
  curve TEXT NOT NULL,
  typical TEXT NOT NULL,
  note TEXT NOT NULL,
  pain TEXT NOT NULL,
  pain_note TEXT NOT NULL,
  pain_seen_at TIMESTAMPTZ(3),
  sent_at TIMESTAMPTZ(3) NOT NULL,
  answer_by TIMESTAMPTZ(3) NOT NULL,
  priority_key TIMESTAMPTZ(3) NOT NULL,
  head_start_hours DOUBLE PRECISION NOT NULL,
  reasons JSONB NOT NULL,
  claimed_by UUID,
  claimed_at TIMESTAMPTZ(3),
  claim_expires_at TIMESTAMPTZ(3),
  check_in_id UUID,
  answered_at TIMESTAMPTZ(3),
  version INTEGER NOT NULL,
  CONSTRAINT submission_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.clip (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  submission_id UUID,
  file_name TEXT NOT NULL,
  view TEXT NOT NULL,
  swing_length TEXT NOT NULL,
  status TEXT NOT NULL,
  length_bytes BIGINT NOT NULL,
  percent INTEGER NOT NULL,
  refusal TEXT,
  width_px INTEGER,
  height_px INTEGER,
  frames INTEGER,
  fps DOUBLE PRECISION,
  duration_ms INTEGER,
  sha256 TEXT,
  fence INTEGER NOT NULL,
  started_at TIMESTAMPTZ(3),
  marks_version INTEGER NOT NULL,
  created_at TIMESTAMPTZ(3) NOT NULL,
  expires_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT clip_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.mark (
  academy_id UUID NOT NULL,
  clip_id UUID NOT NULL,
  position TEXT NOT NULL,
  point TEXT NOT NULL,
  frame INTEGER NOT NULL,
  x DOUBLE PRECISION NOT NULL,
  y DOUBLE PRECISION NOT NULL,
  source TEXT NOT NULL,
  by_membership UUID NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT mark_pkey PRIMARY KEY (academy_id,clip_id,position,point)
);

CREATE TABLE public.observation (
  academy_id UUID NOT NULL,
  clip_id UUID NOT NULL,
  key TEXT NOT NULL,
  answer TEXT NOT NULL,
  by_membership UUID NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT observation_pkey PRIMARY KEY (academy_id,clip_id,key)
);

CREATE TABLE public.measurement (
  academy_id UUID NOT NULL,
  submission_id UUID NOT NULL,
  clip_id UUID NOT NULL,
  key TEXT NOT NULL,
  unit TEXT NOT NULL,
  value DOUBLE PRECISION NOT NULL,
  u DOUBLE PRECISION NOT NULL,
  band_low DOUBLE PRECISION,
  band_high DOUBLE PRECISION,
  method_version TEXT NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT measurement_pkey PRIMARY KEY (academy_id,submission_id,clip_id,key)
);

CREATE TABLE public.diagnosis (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  submission_id UUID NOT NULL,
  fault TEXT NOT NULL,
  chosen_cause TEXT NOT NULL,
  set_up_ticks TEXT[],
  inputs JSONB NOT NULL,
  ranking JSONB NOT NULL,
  method_version TEXT NOT NULL,
  overruled BOOLEAN NOT NULL,
  by_membership UUID NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT diagnosis_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.reply (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  submission_id UUID NOT NULL,
  status TEXT NOT NULL,
  words TEXT NOT NULL,
  cause TEXT,
  set_up_ticks TEXT[],
  frames JSONB NOT NULL,
  plan JSONB,
  programme_id UUID,
  by_membership UUID NOT NULL,
  version INTEGER NOT NULL,
  updated_at TIMESTAMPTZ(3) NOT NULL,
  sent_at TIMESTAMPTZ(3),
  read_at TIMESTAMPTZ(3),
  CONSTRAINT reply_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.programme (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  submission_id UUID NOT NULL,
  cause TEXT NOT NULL,
  drill_id TEXT NOT NULL,
  drill_version INTEGER NOT NULL,
  exaggeration TEXT NOT NULL,
  place TEXT NOT NULL,
  weekly_minutes INTEGER NOT NULL,
  rung TEXT NOT NULL,
  status TEXT NOT NULL,
  hold_reason TEXT,
  created_at TIMESTAMPTZ(3) NOT NULL,
  ended_at TIMESTAMPTZ(3),
  CONSTRAINT programme_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.practice_entry (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  programme_id UUID NOT NULL,
  rung TEXT NOT NULL,
  balls INTEGER NOT NULL,
  clean INTEGER NOT NULL,
  filmed BOOLEAN NOT NULL,
  pain TEXT NOT NULL,
  local_date TEXT NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  verdict TEXT NOT NULL,
  CONSTRAINT practice_entry_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.check_in (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  programme_id UUID NOT NULL,
  asks TEXT NOT NULL,
  local_time TEXT NOT NULL,
  zone TEXT NOT NULL,
  due_at TIMESTAMPTZ(3) NOT NULL,
  status TEXT NOT NULL,
  sent_at TIMESTAMPTZ(3),
  CONSTRAINT check_in_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.roll_up (
  academy_id UUID NOT NULL,
  student_id UUID NOT NULL,
  week TEXT NOT NULL,
  entries INTEGER NOT NULL,
  balls INTEGER NOT NULL,
  clean INTEGER NOT NULL,
  days INTEGER NOT NULL,
  pains INTEGER NOT NULL,
  swings INTEGER NOT NULL,
  tally_balls INTEGER NOT NULL,
  tally_solid INTEGER NOT NULL,
  tally_fat INTEGER NOT NULL,
  tally_thin INTEGER NOT NULL,
  tally_topped INTEGER NOT NULL,
  updated_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT roll_up_pkey PRIMARY KEY (academy_id,student_id,week)
);

CREATE INDEX submission_academy_id_student_id_sent_at_idx ON public.submission(academy_id, student_id, sent_at);

CREATE INDEX clip_academy_id_submission_id_idx ON public.clip(academy_id, submission_id);

CREATE INDEX diagnosis_academy_id_submission_id_at_idx ON public.diagnosis(academy_id, submission_id, at);

CREATE UNIQUE INDEX reply_academy_id_submission_id_key ON public.reply(academy_id, submission_id);

CREATE INDEX programme_academy_id_student_id_idx ON public.programme(academy_id, student_id);

CREATE INDEX practice_entry_academy_id_programme_id_at_idx ON public.practice_entry(academy_id, programme_id, at);

CREATE INDEX practice_entry_academy_id_student_id_at_idx ON public.practice_entry(academy_id, student_id, at);

CREATE INDEX check_in_academy_id_programme_id_idx ON public.check_in(academy_id, programme_id);

ALTER TABLE public.submission ADD CONSTRAINT submission_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.submission ADD CONSTRAINT submission_academy_id_claimed_by_fkey FOREIGN KEY (academy_id, claimed_by) REFERENCES public.membership(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.clip ADD CONSTRAINT clip_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.clip ADD CONSTRAINT clip_academy_id_submission_id_fkey FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.mark ADD CONSTRAINT mark_academy_id_clip_id_fkey FOREIGN KEY (academy_id, clip_id) REFERENCES public.clip(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.observation ADD CONSTRAINT observation_academy_id_clip_id_fkey FOREIGN KEY (academy_id, clip_id) REFERENCES public.clip(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.measurement ADD CONSTRAINT measurement_academy_id_submission_id_fkey FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.measurement ADD CONSTRAINT measurement_academy_id_clip_id_fkey FOREIGN KEY (academy_id, clip_id) REFERENCES public.clip(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.diagnosis ADD CONSTRAINT diagnosis_academy_id_submission_id_fkey FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.reply ADD CONSTRAINT reply_academy_id_submission_id_fkey FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.reply ADD CONSTRAINT reply_academy_id_by_membership_fkey FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.programme ADD CONSTRAINT programme_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.programme ADD CONSTRAINT programme_academy_id_submission_id_fkey FOREIGN KEY (academy_id, submission_id) REFERENCES public.submission(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.practice_entry ADD CONSTRAINT practice_entry_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.practice_entry ADD CONSTRAINT practice_entry_academy_id_programme_id_fkey FOREIGN KEY (academy_id, programme_id) REFERENCES public.programme(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.check_in ADD CONSTRAINT check_in_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.check_in ADD CONSTRAINT check_in_academy_id_programme_id_fkey FOREIGN KEY (academy_id, programme_id) REFERENCES public.programme(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.roll_up ADD CONSTRAINT roll_up_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;
