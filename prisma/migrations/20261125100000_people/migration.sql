-- People, academies and the records every tenant keeps.
-- Locks: new tables only, nothing else can hold or want them; milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE SCHEMA identity;

CREATE SCHEMA system;

CREATE TABLE identity.person (
  id UUID NOT NULL,
  email TEXT NOT NULL,
  name TEXT NOT NULL,
  created_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT person_pkey PRIMARY KEY (id)
);

CREATE TABLE identity.credential (
  person_id UUID NOT NULL,
  kind TEXT NOT NULL,
  hash TEXT NOT NULL,
  changed_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT credential_pkey PRIMARY KEY (person_id,kind)
);

CREATE TABLE identity.session (
  id UUID NOT NULL,
  person_id UUID NOT NULL,
  token_hash BYTEA NOT NULL,
  former_hash BYTEA,
  academy_id UUID,
  created_at TIMESTAMPTZ(3) NOT NULL,
  rotated_at TIMESTAMPTZ(3) NOT NULL,
  seen_at TIMESTAMPTZ(3) NOT NULL,
  expires_at TIMESTAMPTZ(3) NOT NULL,
  revoked_at TIMESTAMPTZ(3),
  device TEXT NOT NULL,
  CONSTRAINT session_pkey PRIMARY KEY (id)
);

CREATE TABLE identity.attempt (
  key TEXT NOT NULL,
  window_start TIMESTAMPTZ(3) NOT NULL,
  count INTEGER NOT NULL,
  CONSTRAINT attempt_pkey PRIMARY KEY (key)
);

CREATE TABLE system.outbox (
  id UUID NOT NULL,
  academy_id UUID NOT NULL,
  kind TEXT NOT NULL,
  payload JSONB NOT NULL,
  created_at TIMESTAMPTZ(3) NOT NULL,
  taken_at TIMESTAMPTZ(3),
  sent_at TIMESTAMPTZ(3),
  CONSTRAINT outbox_pkey PRIMARY KEY (id)
);

CREATE TABLE public.academy (
  id UUID NOT NULL,
  slug TEXT NOT NULL,
  name TEXT NOT NULL,
  zone TEXT NOT NULL,
  working_hours JSONB NOT NULL,
  promise_hours INTEGER NOT NULL,
  trial_days INTEGER NOT NULL,
  trial_starts TEXT NOT NULL,
  price_words TEXT NOT NULL,
  consent_age INTEGER NOT NULL,
  safeguard_contact TEXT NOT NULL,
  created_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT academy_pkey PRIMARY KEY (id)
);

CREATE TABLE public.membership (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  person_id UUID NOT NULL,
  role TEXT NOT NULL,
  name TEXT NOT NULL,
  email TEXT NOT NULL,
  zone TEXT NOT NULL,
  created_at TIMESTAMPTZ(3) NOT NULL,
  ended_at TIMESTAMPTZ(3),
  CONSTRAINT membership_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.student (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  membership_id UUID NOT NULL,
  hand TEXT NOT NULL,
  age_group TEXT NOT NULL,
  units TEXT NOT NULL,
  usual_miss TEXT,
  days_per_week INTEGER,
  minutes_per_day INTEGER,
  place TEXT,
  goal TEXT,
  standing TEXT NOT NULL,
  trial_started_at TIMESTAMPTZ(3),
  trial_ends_at TIMESTAMPTZ(3),
  consent JSONB,
  created_at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT student_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.standing_change (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  student_id UUID NOT NULL,
  from_standing TEXT,
  to_standing TEXT NOT NULL,
  reason TEXT NOT NULL,
  by_membership UUID,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT standing_change_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.library_item (
  academy_id UUID NOT NULL,
  kind TEXT NOT NULL,
  key TEXT NOT NULL,
  version INTEGER NOT NULL,
  content JSONB NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT library_item_pkey PRIMARY KEY (academy_id,kind,key,version)
);

CREATE TABLE public.mail (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  to_membership UUID NOT NULL,
  kind TEXT NOT NULL,
  subject TEXT NOT NULL,
  text_body TEXT NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT mail_pkey PRIMARY KEY (academy_id,id)
);

CREATE TABLE public.effect (
  academy_id UUID NOT NULL,
  event_id UUID NOT NULL,
  name TEXT NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT effect_pkey PRIMARY KEY (academy_id,event_id,name)
);

CREATE TABLE public.idempotency (
  academy_id UUID NOT NULL,
  owner TEXT NOT NULL,
  key TEXT NOT NULL,
  request_hash TEXT NOT NULL,
  status INTEGER NOT NULL,
  body TEXT NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  CONSTRAINT idempotency_pkey PRIMARY KEY (academy_id,owner,key)
);

CREATE TABLE public.audit_entry (
  academy_id UUID NOT NULL,
  id UUID NOT NULL,
  at TIMESTAMPTZ(3) NOT NULL,
  actor TEXT NOT NULL,
  action TEXT NOT NULL,
  subject TEXT NOT NULL,
  detail JSONB NOT NULL,
  request_id TEXT NOT NULL,
  seq BIGINT,
  prev_hash BYTEA,
  hash BYTEA,
  sealed_at TIMESTAMPTZ(3),
  CONSTRAINT audit_entry_pkey PRIMARY KEY (academy_id,id)
);

CREATE UNIQUE INDEX person_email_key ON identity.person(email);

CREATE UNIQUE INDEX session_token_hash_key ON identity.session(token_hash);

CREATE UNIQUE INDEX session_former_hash_key ON identity.session(former_hash);

CREATE INDEX session_person_id_idx ON identity.session(person_id);

CREATE UNIQUE INDEX academy_slug_key ON public.academy(slug);

CREATE INDEX membership_person_id_idx ON public.membership(person_id);

CREATE UNIQUE INDEX membership_academy_id_person_id_key ON public.membership(academy_id, person_id);

CREATE UNIQUE INDEX student_academy_id_membership_id_key ON public.student(academy_id, membership_id);

CREATE INDEX standing_change_academy_id_student_id_at_idx ON public.standing_change(academy_id, student_id, at);

CREATE INDEX mail_academy_id_at_idx ON public.mail(academy_id, at);

CREATE UNIQUE INDEX audit_entry_academy_id_seq_key ON public.audit_entry(academy_id, seq);

ALTER TABLE identity.credential ADD CONSTRAINT credential_person_id_fkey FOREIGN KEY (person_id) REFERENCES identity.person(id) ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE identity.session ADD CONSTRAINT session_person_id_fkey FOREIGN KEY (person_id) REFERENCES identity.person(id) ON DELETE CASCADE ON UPDATE CASCADE;

ALTER TABLE public.membership ADD CONSTRAINT membership_academy_id_fkey FOREIGN KEY (academy_id) REFERENCES public.academy(id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.student ADD CONSTRAINT student_academy_id_fkey FOREIGN KEY (academy_id) REFERENCES public.academy(id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.student ADD CONSTRAINT student_academy_id_membership_id_fkey FOREIGN KEY (academy_id, membership_id) REFERENCES public.membership(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE public.standing_change ADD CONSTRAINT standing_change_academy_id_student_id_fkey FOREIGN KEY (academy_id, student_id) REFERENCES public.student(academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE;
