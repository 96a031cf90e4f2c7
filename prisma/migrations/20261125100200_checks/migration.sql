-- What a row may hold: closed word lists, sound tallies, numbers that are numbers; and the partial indexes of the hot paths.
-- Locks: each table against writes while its constraint is added; the tables are new and empty, milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- Nothing made here may be run by everyone: each function is granted by name.
ALTER DEFAULT PRIVILEGES REVOKE EXECUTE ON FUNCTIONS FROM PUBLIC;

CREATE FUNCTION public.is_count(value jsonb) RETURNS boolean
LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp
RETURN CASE WHEN jsonb_typeof(value) = 'number'
  THEN value::numeric BETWEEN 0 AND 100 AND value::numeric = trunc(value::numeric)
  ELSE false END;

-- A tally counts each ball once: what is named may never be more than the balls that were hit.
CREATE FUNCTION public.is_sound_tally(tally jsonb) RETURNS boolean
LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp
RETURN CASE
  WHEN jsonb_typeof(tally) <> 'object' THEN false
  WHEN NOT public.is_count(tally -> 'balls') IS TRUE THEN false
  WHEN (SELECT bool_and(public.is_count(tally -> miss) IS TRUE)
        FROM unnest(ARRAY['solid', 'fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky']) AS miss)
  THEN (SELECT sum((tally -> miss)::numeric) <= (tally -> 'balls')::numeric
        FROM unnest(ARRAY['solid', 'fat', 'thin', 'topped', 'heel', 'toe', 'shank', 'sky']) AS miss)
  ELSE false END;

ALTER TABLE identity.person
  ADD CONSTRAINT person_email_lower CHECK (email = lower(email) AND email <> '');
ALTER TABLE identity.credential
  ADD CONSTRAINT credential_kind CHECK (kind IN ('password'));
ALTER TABLE identity.session
  ADD CONSTRAINT session_token_hash_length CHECK (octet_length(token_hash) = 32),
  ADD CONSTRAINT session_former_hash_length CHECK (octet_length(former_hash) = 32);
ALTER TABLE identity.attempt
  ADD CONSTRAINT attempt_count CHECK (count > 0);
ALTER TABLE system.outbox
  ADD CONSTRAINT outbox_kind_words CHECK (kind ~ '^[a-z-]+[.][a-z-]+$');

ALTER TABLE public.academy
  ADD CONSTRAINT academy_slug_words CHECK (slug ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
  ADD CONSTRAINT academy_trial_starts CHECK (trial_starts IN ('joining', 'first-swing')),
  ADD CONSTRAINT academy_promise_hours CHECK (promise_hours BETWEEN 1 AND 240),
  ADD CONSTRAINT academy_trial_days CHECK (trial_days BETWEEN 1 AND 365),
  ADD CONSTRAINT academy_consent_age CHECK (consent_age BETWEEN 0 AND 30);
ALTER TABLE public.membership
  ADD CONSTRAINT membership_role CHECK (role IN ('coach', 'manager', 'student'));
ALTER TABLE public.student
  ADD CONSTRAINT student_hand CHECK (hand IN ('right', 'left')),
  ADD CONSTRAINT student_age_group CHECK (age_group IN ('adult', 'junior', 'senior')),
  ADD CONSTRAINT student_units CHECK (units IN ('metric', 'imperial')),
  ADD CONSTRAINT student_place CHECK (place IN ('mat', 'grass', 'home')),
  ADD CONSTRAINT student_days_per_week CHECK (days_per_week BETWEEN 0 AND 7),
  ADD CONSTRAINT student_minutes_per_day CHECK (minutes_per_day BETWEEN 0 AND 1440),
  ADD CONSTRAINT student_standing CHECK (standing IN ('invited', 'trial', 'lapsed', 'paid', 'paused', 'left'));
ALTER TABLE public.standing_change
  ADD CONSTRAINT standing_change_from
    CHECK (from_standing IN ('invited', 'trial', 'lapsed', 'paid', 'paused', 'left')),
  ADD CONSTRAINT standing_change_to CHECK (to_standing IN ('invited', 'trial', 'lapsed', 'paid', 'paused', 'left'));

ALTER TABLE public.submission
  ADD CONSTRAINT submission_status
    CHECK (status IN ('preparing', 'needs-clip', 'waiting', 'answered', 'film-again', 'withdrawn')),
  ADD CONSTRAINT submission_club CHECK (club IN (
    'driver', 'fairway', 'hybrid', '5-iron', '6-iron', '7-iron', '8-iron', '9-iron', 'wedge')),
  ADD CONSTRAINT submission_lie CHECK (lie IN ('tee', 'mat', 'fairway', 'rough', 'sand', 'slope', 'net')),
  ADD CONSTRAINT submission_tally CHECK (public.is_sound_tally(tally)),
  ADD CONSTRAINT submission_lead_fault CHECK (lead_fault IN (
    'solid', 'fat', 'thin', 'topped', 'slice', 'hook', 'push', 'pull', 'shank', 'heel', 'toe', 'sky')),
  ADD CONSTRAINT submission_start_line CHECK (start_line IN ('left', 'straight', 'right', 'cannot-see')),
  ADD CONSTRAINT submission_curve CHECK (curve IN ('left', 'none', 'right', 'cannot-see')),
  ADD CONSTRAINT submission_typical CHECK (typical IN ('usual', 'best', 'unsure')),
  ADD CONSTRAINT submission_pain CHECK (pain IN ('none', 'new', 'worse')),
  ADD CONSTRAINT submission_claim_ends CHECK (claimed_by IS NULL OR claim_expires_at IS NOT NULL),
  ADD CONSTRAINT submission_head_start CHECK (head_start_hours >= 0 AND head_start_hours < 'Infinity');
ALTER TABLE public.clip
  ADD CONSTRAINT clip_view CHECK (view IN ('face-on', 'down-the-line')),
  ADD CONSTRAINT clip_swing_length CHECK (swing_length IN ('rehearsal', 'hip-high', 'three-quarter', 'full')),
  ADD CONSTRAINT clip_status
    CHECK (status IN ('uploading', 'uploaded', 'preparing', 'ready', 'refused', 'expired')),
  ADD CONSTRAINT clip_refused_why CHECK (status <> 'refused' OR refusal IS NOT NULL),
  ADD CONSTRAINT clip_length_bytes CHECK (length_bytes >= 0),
  ADD CONSTRAINT clip_percent CHECK (percent BETWEEN 0 AND 100),
  ADD CONSTRAINT clip_picture CHECK (width_px > 0 AND height_px > 0 AND frames > 0 AND duration_ms >= 0),
  ADD CONSTRAINT clip_fps CHECK (fps > 0 AND fps < 'Infinity'),
  ADD CONSTRAINT clip_fence CHECK (fence >= 0);
ALTER TABLE public.mark
  ADD CONSTRAINT mark_position CHECK (position IN (
    'address', 'shaft-parallel-back', 'lead-arm-parallel-back', 'top', 'lead-arm-parallel-down',
    'shaft-parallel-down', 'impact', 'shaft-parallel-through', 'finish')),
  ADD CONSTRAINT mark_point CHECK (point IN (
    'ball', 'lead-heel', 'trail-heel', 'lead-ankle', 'trail-ankle', 'hip-middle', 'neck-base', 'head-centre',
    'lead-shoulder', 'lead-wrist', 'grip-end', 'clubhead', 'shaft-mid', 'lead-thigh-inside', 'seat-line',
    'toe-line', 'hands', 'target-stick')),
  ADD CONSTRAINT mark_source CHECK (source IN ('coach', 'suggested', 'carried')),
  ADD CONSTRAINT mark_inside CHECK (frame >= 0 AND x BETWEEN 0 AND 20000 AND y BETWEEN 0 AND 20000);
ALTER TABLE public.observation
  ADD CONSTRAINT observation_answer CHECK (answer IN ('yes', 'no', 'cannot-tell'));
ALTER TABLE public.measurement
  ADD CONSTRAINT measurement_unit CHECK (unit IN ('mm', 'deg', 'percent', 'ratio')),
  ADD CONSTRAINT measurement_value CHECK (value > '-Infinity' AND value < 'Infinity'),
  ADD CONSTRAINT measurement_u CHECK (u >= 0 AND u < 'Infinity');
ALTER TABLE public.diagnosis
  ADD CONSTRAINT diagnosis_fault CHECK (fault IN (
    'fat', 'thin', 'topped', 'slice', 'hook', 'push', 'pull', 'shank', 'heel', 'toe', 'sky')),
  ADD CONSTRAINT diagnosis_set_up_ticks
    CHECK (set_up_ticks IS NOT NULL AND set_up_ticks <@ ARRAY['grip', 'handle', 'hips', 'ball']);
ALTER TABLE public.reply
  ADD CONSTRAINT reply_status CHECK (status IN ('draft', 'sent')),
  ADD CONSTRAINT reply_sent_when CHECK (status <> 'sent' OR sent_at IS NOT NULL),
  ADD CONSTRAINT reply_set_up_ticks
    CHECK (set_up_ticks IS NOT NULL AND set_up_ticks <@ ARRAY['grip', 'handle', 'hips', 'ball']);
ALTER TABLE public.library_item
  ADD CONSTRAINT library_item_kind CHECK (kind IN ('fault', 'cause', 'band', 'drill', 'phrase')),
  ADD CONSTRAINT library_item_version CHECK (version > 0);
ALTER TABLE public.programme
  ADD CONSTRAINT programme_exaggeration CHECK (exaggeration IN ('mild', 'firm', 'strong')),
  ADD CONSTRAINT programme_place CHECK (place IN ('mat', 'grass', 'home')),
  ADD CONSTRAINT programme_rung
    CHECK (rung IN ('rehearsal', 'brush', 'hip-high', 'three-quarter', 'full', 'transfer')),
  ADD CONSTRAINT programme_status CHECK (status IN ('open', 'held', 'done', 'replaced')),
  ADD CONSTRAINT programme_weekly_minutes CHECK (weekly_minutes BETWEEN 0 AND 10080);
ALTER TABLE public.practice_entry
  ADD CONSTRAINT practice_entry_rung
    CHECK (rung IN ('rehearsal', 'brush', 'hip-high', 'three-quarter', 'full', 'transfer')),
  ADD CONSTRAINT practice_entry_balls CHECK (balls >= 0 AND clean BETWEEN 0 AND balls),
  ADD CONSTRAINT practice_entry_pain CHECK (pain IN ('none', 'new', 'worse')),
  ADD CONSTRAINT practice_entry_local_date CHECK (local_date ~ '^\d{4}-\d{2}-\d{2}$'),
  ADD CONSTRAINT practice_entry_verdict CHECK (verdict IN ('passed', 'stay', 'back', 'hold'));
ALTER TABLE public.check_in
  ADD CONSTRAINT check_in_asks CHECK (asks IN ('practice', 'clip')),
  ADD CONSTRAINT check_in_local_time CHECK (local_time ~ '^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$'),
  ADD CONSTRAINT check_in_status CHECK (status IN ('scheduled', 'sent', 'done', 'cancelled'));
ALTER TABLE public.roll_up
  ADD CONSTRAINT roll_up_week CHECK (week ~ '^\d{4}-\d{2}-\d{2}$'),
  ADD CONSTRAINT roll_up_counts CHECK (
    LEAST(entries, balls, clean, days, pains, swings, tally_balls, tally_solid, tally_fat, tally_thin, tally_topped) >= 0);
ALTER TABLE public.idempotency
  ADD CONSTRAINT idempotency_status CHECK (status BETWEEN 100 AND 599);
ALTER TABLE public.audit_entry
  ADD CONSTRAINT audit_entry_sealed_whole CHECK (num_nulls(seq, prev_hash, hash, sealed_at) IN (0, 4)),
  ADD CONSTRAINT audit_entry_seq CHECK (seq > 0);

-- The inbox is one range of this index: nothing that passes with time is in its order.
CREATE INDEX submission_inbox ON public.submission (academy_id, priority_key, id) WHERE status = 'waiting';
CREATE INDEX submission_claim_end ON public.submission (claim_expires_at)
  WHERE status = 'waiting' AND claimed_by IS NOT NULL;
-- One movement at a time: a student has one programme that runs or is held.
CREATE UNIQUE INDEX programme_one_running ON public.programme (academy_id, student_id)
  WHERE status IN ('open', 'held');
CREATE INDEX clip_unprepared ON public.clip (created_at) WHERE status IN ('uploaded', 'preparing');
CREATE INDEX clip_upload_end ON public.clip (expires_at) WHERE status = 'uploading';
CREATE INDEX check_in_due ON public.check_in (due_at) WHERE status = 'scheduled';
CREATE INDEX student_trial_end ON public.student (trial_ends_at) WHERE standing = 'trial';
CREATE INDEX outbox_unsent ON system.outbox (created_at, id) WHERE sent_at IS NULL;
CREATE INDEX audit_entry_unsealed ON public.audit_entry (academy_id) WHERE seq IS NULL;
