-- Tenants apart: every tenant table shows and takes the rows of one academy only, the one named in app.academy_id.
-- Locks: each table wholly while its policy is made; the tables are new and empty, milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- The academy this statement works for, or null: then no policy lets a row through.
CREATE FUNCTION public.current_academy() RETURNS uuid
LANGUAGE sql STABLE
RETURN NULLIF(current_setting('app.academy_id', true), '')::uuid;

GRANT USAGE ON SCHEMA public, system TO app;
GRANT EXECUTE ON FUNCTION public.current_academy(), public.is_count(jsonb), public.is_sound_tally(jsonb) TO app;

-- Identity belongs to no academy: the app role has no grant there and gets in by the crossings alone.
ALTER TABLE identity.person ENABLE ROW LEVEL SECURITY;
ALTER TABLE identity.person FORCE ROW LEVEL SECURITY;
ALTER TABLE identity.credential ENABLE ROW LEVEL SECURITY;
ALTER TABLE identity.credential FORCE ROW LEVEL SECURITY;
ALTER TABLE identity.session ENABLE ROW LEVEL SECURITY;
ALTER TABLE identity.session FORCE ROW LEVEL SECURITY;
ALTER TABLE identity.attempt ENABLE ROW LEVEL SECURITY;
ALTER TABLE identity.attempt FORCE ROW LEVEL SECURITY;

-- An event is written by its tenant and read across tenants by the relay's crossing only.
ALTER TABLE system.outbox ENABLE ROW LEVEL SECURITY;
ALTER TABLE system.outbox FORCE ROW LEVEL SECURITY;
CREATE POLICY events_of_own_academy ON system.outbox TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()) AND taken_at IS NULL AND sent_at IS NULL);
GRANT SELECT, INSERT ON system.outbox TO app;

ALTER TABLE public.academy ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.academy FORCE ROW LEVEL SECURITY;
CREATE POLICY own_academy ON public.academy TO app
  USING (id = (SELECT public.current_academy()))
  WITH CHECK (id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.academy TO app;
GRANT UPDATE (name, zone, working_hours, promise_hours, trial_days, trial_starts, price_words, consent_age,
  safeguard_contact) ON public.academy TO app;

ALTER TABLE public.membership ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.membership FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.membership TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.membership TO app;
GRANT UPDATE (role, name, email, zone, ended_at) ON public.membership TO app;

ALTER TABLE public.student ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.student FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.student TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.student TO app;
GRANT UPDATE (hand, age_group, units, usual_miss, days_per_week, minutes_per_day, place, goal, standing,
  trial_started_at, trial_ends_at, consent) ON public.student TO app;

ALTER TABLE public.standing_change ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.standing_change FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.standing_change TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.standing_change TO app;

ALTER TABLE public.submission ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.submission FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.submission TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.submission TO app;
GRANT UPDATE (status, club, lie, tally, lead_fault, start_line, curve, typical, note, pain, pain_note,
  pain_seen_at, sent_at, answer_by, priority_key, head_start_hours, reasons, claimed_by, claimed_at,
  claim_expires_at, check_in_id, answered_at, version) ON public.submission TO app;

ALTER TABLE public.clip ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.clip FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.clip TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.clip TO app;
GRANT UPDATE (submission_id, file_name, view, swing_length, status, length_bytes, percent, refusal, width_px,
  height_px, frames, fps, duration_ms, sha256, fence, started_at, marks_version, expires_at) ON public.clip TO
  app;

ALTER TABLE public.mark ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.mark FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.mark TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT, DELETE ON public.mark TO app;
GRANT UPDATE (frame, x, y, source, by_membership, at) ON public.mark TO app;

ALTER TABLE public.observation ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.observation FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.observation TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT, DELETE ON public.observation TO app;
GRANT UPDATE (answer, by_membership, at) ON public.observation TO app;

ALTER TABLE public.measurement ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.measurement FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.measurement TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT, DELETE ON public.measurement TO app;
GRANT UPDATE (unit, value, u, band_low, band_high, method_version, at) ON public.measurement TO app;

ALTER TABLE public.diagnosis ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.diagnosis FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.diagnosis TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.diagnosis TO app;

ALTER TABLE public.reply ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.reply FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.reply TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.reply TO app;
GRANT UPDATE (status, words, cause, set_up_ticks, frames, plan, programme_id, by_membership, version,
  updated_at, sent_at, read_at) ON public.reply TO app;

ALTER TABLE public.library_item ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.library_item FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.library_item TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.library_item TO app;

ALTER TABLE public.programme ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.programme FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.programme TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.programme TO app;
GRANT UPDATE (exaggeration, place, weekly_minutes, rung, status, hold_reason, ended_at) ON public.programme TO
  app;

ALTER TABLE public.practice_entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.practice_entry FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.practice_entry TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.practice_entry TO app;

ALTER TABLE public.check_in ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.check_in FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.check_in TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.check_in TO app;
GRANT UPDATE (local_time, zone, due_at, status, sent_at) ON public.check_in TO app;

ALTER TABLE public.roll_up ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.roll_up FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.roll_up TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.roll_up TO app;
GRANT UPDATE (entries, balls, clean, days, pains, swings, tally_balls, tally_solid, tally_fat, tally_thin,
  tally_topped, updated_at) ON public.roll_up TO app;

ALTER TABLE public.mail ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.mail FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.mail TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.mail TO app;

ALTER TABLE public.effect ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.effect FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.effect TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.effect TO app;

ALTER TABLE public.idempotency ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.idempotency FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.idempotency TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT, DELETE ON public.idempotency TO app;
GRANT UPDATE (request_hash, status, body, at) ON public.idempotency TO app;

ALTER TABLE public.audit_entry ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.audit_entry FORCE ROW LEVEL SECURITY;
-- The app writes entries unsealed; only the crossing that seals may number and chain them.
CREATE POLICY rows_of_own_academy ON public.audit_entry TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()) AND seq IS NULL);
GRANT SELECT, INSERT ON public.audit_entry TO app;
