-- What goes with a reply: the academy's film about its cause, told in words too, and whether the talk-through does; and
-- when the student said to have read it, beside when it was first opened.
-- Locks: reply and teaching_clip wholly while columns are added (defaults are constants, no rewrite), milliseconds; the
-- checks read each table once.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.teaching_clip
  ADD COLUMN words text NOT NULL DEFAULT '',
  ADD CONSTRAINT teaching_clip_words CHECK (length(words) <= 600);
GRANT UPDATE (words) ON public.teaching_clip TO app;

ALTER TABLE public.reply
  ADD COLUMN teaching_clip jsonb,
  ADD COLUMN with_talk boolean NOT NULL DEFAULT true,
  ADD COLUMN said_read_at timestamptz(3),
  ADD CONSTRAINT reply_said_read CHECK (said_read_at IS NULL OR read_at IS NOT NULL);
GRANT UPDATE (teaching_clip, with_talk, said_read_at) ON public.reply TO app;

CREATE OR REPLACE FUNCTION public.open_submission(p_academy uuid, p_submission uuid) RETURNS json
LANGUAGE plpgsql AS $$
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN (
    SELECT json_build_object(
      'submission', json_build_object(
        'id', s.id, 'studentId', s.student_id, 'status', s.status, 'club', s.club, 'lie', s.lie, 'tally', s.tally,
        'leadFault', s.lead_fault, 'startLine', s.start_line, 'curve', s.curve, 'typical', s.typical,
        'note', s.note, 'pain', s.pain, 'painNote', s.pain_note, 'painSeenAt', public.instant_text(s.pain_seen_at),
        'sentAt', public.instant_text(s.sent_at), 'answerBy', public.instant_text(s.answer_by),
        'priorityKey', public.instant_text(s.priority_key), 'headStartHours', s.head_start_hours,
        'reasons', s.reasons, 'claimedBy', s.claimed_by, 'claimedByName', h.name,
        'claimedAt', public.instant_text(s.claimed_at), 'claimExpiresAt', public.instant_text(s.claim_expires_at),
        'checkInId', s.check_in_id, 'answeredAt', public.instant_text(s.answered_at), 'version', s.version),
      'student', json_build_object(
        'id', t.id, 'membershipId', t.membership_id, 'name', m.name, 'zone', m.zone, 'hand', t.hand,
        'ageGroup', t.age_group, 'units', t.units, 'usualMiss', t.usual_miss, 'daysPerWeek', t.days_per_week,
        'minutesPerDay', t.minutes_per_day, 'place', t.place, 'goal', t.goal, 'standing', t.standing,
        'trialStartedAt', public.instant_text(t.trial_started_at),
        'trialEndsAt', public.instant_text(t.trial_ends_at)),
      'clips', public.clips_document(p_academy, s.id),
      'diagnosis', (SELECT json_build_object(
          'id', d.id, 'fault', d.fault, 'chosenCause', d.chosen_cause, 'setUpTicks', d.set_up_ticks,
          'inputs', d.inputs, 'ranking', d.ranking, 'methodVersion', d.method_version, 'overruled', d.overruled,
          'byMembership', d.by_membership, 'byName', b.name, 'at', public.instant_text(d.at))
        FROM public.diagnosis d
        JOIN public.membership b ON b.academy_id = p_academy AND b.id = d.by_membership
        WHERE d.academy_id = p_academy AND d.submission_id = s.id
        ORDER BY d.at DESC, d.id DESC LIMIT 1),
      'reply', (SELECT json_build_object(
          'id', r.id, 'status', r.status, 'words', r.words, 'cause', r.cause, 'setUpTicks', r.set_up_ticks,
          'frames', r.frames, 'plan', r.plan, 'programmeId', r.programme_id, 'byMembership', r.by_membership,
          'authorName', a.name, 'version', r.version, 'updatedAt', public.instant_text(r.updated_at),
          'sentAt', public.instant_text(r.sent_at), 'readAt', public.instant_text(r.read_at),
          'sendsAt', public.instant_text(r.sends_at), 'correctedAt', public.instant_text(r.corrected_at),
          'moreCauses', r.more_causes, 'moreAgreedAt', public.instant_text(r.more_agreed_at),
          'teachingClip', r.teaching_clip, 'withTalk', r.with_talk)
        FROM public.reply r JOIN public.membership a ON a.academy_id = p_academy AND a.id = r.by_membership
        WHERE r.academy_id = p_academy AND r.submission_id = s.id),
      'measurements', (SELECT coalesce(json_agg(json_build_object(
          'clipId', x.clip_id, 'key', x.key, 'unit', x.unit, 'value', x.value, 'u', x.u, 'bandLow', x.band_low,
          'bandHigh', x.band_high, 'methodVersion', x.method_version, 'at', public.instant_text(x.at))
          ORDER BY x.clip_id, x.key), '[]'::json)
        FROM public.measurement x WHERE x.academy_id = p_academy AND x.submission_id = s.id),
      'earlier', (SELECT coalesce(json_agg(json_build_object(
          'id', e.id, 'sentAt', public.instant_text(e.sent_at), 'status', e.status, 'cause', r.cause)
          ORDER BY e.sent_at DESC, e.id DESC), '[]'::json)
        FROM (SELECT * FROM public.submission
          WHERE academy_id = p_academy AND student_id = s.student_id AND (sent_at, id) < (s.sent_at, s.id)
          ORDER BY sent_at DESC, id DESC LIMIT 10) e
        LEFT JOIN public.reply r ON r.academy_id = p_academy AND r.submission_id = e.id AND r.status = 'sent'),
      'programme', public.programme_document(p_academy, s.student_id))
    FROM public.submission s
    JOIN public.student t ON t.academy_id = p_academy AND t.id = s.student_id
    JOIN public.membership m ON m.academy_id = p_academy AND m.id = t.membership_id
    LEFT JOIN public.membership h ON h.academy_id = p_academy AND h.id = s.claimed_by
    WHERE s.academy_id = p_academy AND s.id = p_submission
  );
END
$$;
