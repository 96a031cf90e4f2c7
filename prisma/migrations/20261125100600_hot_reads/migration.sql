-- Hot reads: one statement that sets the tenant for itself and selects. They run as the caller, under its policies.
-- Locks: none beyond the catalog.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

-- Sets the academy for the statement that calls it. Inside another academy's transaction it raises: a read that
-- changed the tenant of a running verb would let its next write go astray.
CREATE FUNCTION public.enter_academy(p_academy uuid) RETURNS void
LANGUAGE plpgsql AS $$
BEGIN
  IF NULLIF(current_setting('app.academy_id', true), '') <> p_academy::text THEN
    RAISE EXCEPTION 'This transaction works for another academy' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM set_config('app.academy_id', p_academy::text, true);
END
$$;

-- An instant as text, RFC 3339 in UTC with milliseconds.
CREATE FUNCTION public.instant_text(p_at timestamptz) RETURNS text
LANGUAGE sql STABLE
RETURN to_char(p_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"');

-- One page of what waits, by the stored key. The filters are weighed row by row along the index submission_inbox; the
-- page starts right after (p_after_key, p_after_id), so its cost does not grow with its depth.
CREATE FUNCTION public.inbox_page(
  p_academy uuid, p_limit integer, p_after_key timestamptz, p_after_id uuid,
  p_fault text, p_claimed_by text, p_kind text, p_now timestamptz
)
RETURNS TABLE (
  "submissionId" uuid, "priorityKey" timestamptz, "studentId" uuid, "studentName" text, standing text, hand text,
  "ageGroup" text, "trialStartedAt" timestamptz, "trialEndsAt" timestamptz, club text, lie text, view text,
  "swingLength" text, "leadFault" text, tally jsonb, note text, pain text, "painNote" text, "painSeenAt" timestamptz,
  "headStartHours" double precision, reasons jsonb, "sentAt" timestamptz, "answerBy" timestamptz, "checkInId" uuid,
  "claimedBy" uuid, "claimedByName" text, "claimExpiresAt" timestamptz, clips json, version integer
)
LANGUAGE plpgsql AS $$
#variable_conflict use_column
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN QUERY
  WITH page AS (
    SELECT s.* FROM public.submission s
    WHERE s.academy_id = p_academy AND s.status = 'waiting'
      AND (s.priority_key, s.id) > (
        coalesce(p_after_key, '-infinity'), coalesce(p_after_id, '00000000-0000-0000-0000-000000000000'))
      AND (p_fault IS NULL OR s.lead_fault = p_fault)
      AND CASE
        WHEN p_claimed_by IS NULL THEN true
        WHEN p_claimed_by = 'none' THEN s.claimed_by IS NULL OR s.claim_expires_at <= p_now
        ELSE s.claimed_by = p_claimed_by::uuid AND s.claim_expires_at > p_now END
      AND CASE p_kind
        WHEN 'pain' THEN s.pain <> 'none' AND s.pain_seen_at IS NULL
        WHEN 'check-in' THEN s.check_in_id IS NOT NULL
        WHEN 'first' THEN NOT EXISTS (SELECT FROM public.submission e
          WHERE e.academy_id = p_academy AND e.student_id = s.student_id AND e.sent_at < s.sent_at)
        ELSE true END
    ORDER BY s.priority_key, s.id
    LIMIT p_limit
  )
  SELECT s.id, s.priority_key::timestamptz, t.id, m.name, t.standing, t.hand, t.age_group,
    t.trial_started_at::timestamptz, t.trial_ends_at::timestamptz, s.club, s.lie, c.first ->> 'view',
    c.first ->> 'swingLength', s.lead_fault, s.tally, s.note, s.pain, s.pain_note, s.pain_seen_at::timestamptz,
    s.head_start_hours, s.reasons, s.sent_at::timestamptz, s.answer_by::timestamptz, s.check_in_id,
    h.id, h.name, CASE WHEN h.id IS NOT NULL THEN s.claim_expires_at::timestamptz END,
    coalesce(c.every, '[]'::json), s.version
  FROM page s
  JOIN public.student t ON t.academy_id = p_academy AND t.id = s.student_id
  JOIN public.membership m ON m.academy_id = p_academy AND m.id = t.membership_id
  LEFT JOIN public.membership h ON h.academy_id = p_academy AND h.id = s.claimed_by AND s.claim_expires_at > p_now
  LEFT JOIN LATERAL (
    SELECT json_agg(k.line ORDER BY k.created_at, k.id) AS every,
      (array_agg(k.line ORDER BY k.created_at, k.id))[1] AS first
    FROM (
      SELECT created_at, id, json_build_object('id', id, 'view', view, 'swingLength', swing_length,
        'status', status, 'hasPoster', status = 'ready') AS line
      FROM public.clip WHERE academy_id = p_academy AND submission_id = s.id
    ) k
  ) c ON true
  ORDER BY s.priority_key, s.id;
END
$$;

-- A clip with its marks and observations, as the review screen draws it.
CREATE FUNCTION public.clips_document(p_academy uuid, p_submission uuid) RETURNS json
LANGUAGE sql STABLE AS $$
  SELECT coalesce(json_agg(json_build_object(
    'id', c.id, 'fileName', c.file_name, 'view', c.view, 'swingLength', c.swing_length, 'status', c.status,
    'lengthBytes', c.length_bytes, 'createdAt', public.instant_text(c.created_at), 'percent', c.percent,
    'refusal', c.refusal, 'widthPx', c.width_px, 'heightPx', c.height_px, 'frames', c.frames, 'fps', c.fps, 'durationMs', c.duration_ms, 'marksVersion', c.marks_version,
    'marks', (SELECT coalesce(json_agg(json_build_object('position', m.position, 'point', m.point, 'frame', m.frame,
        'x', m.x, 'y', m.y, 'source', m.source) ORDER BY m.frame, m.position, m.point), '[]'::json)
      FROM public.mark m WHERE m.academy_id = p_academy AND m.clip_id = c.id),
    'observations', (SELECT coalesce(json_agg(json_build_object('key', o.key, 'answer', o.answer) ORDER BY o.key),
        '[]'::json)
      FROM public.observation o WHERE o.academy_id = p_academy AND o.clip_id = c.id)
  ) ORDER BY c.created_at, c.id), '[]'::json)
  FROM public.clip c WHERE c.academy_id = p_academy AND c.submission_id = p_submission
$$;

-- The programme a student works on, with the last ten entries, newest first; null when there is none.
CREATE FUNCTION public.programme_document(p_academy uuid, p_student uuid) RETURNS json
LANGUAGE sql STABLE AS $$
  SELECT json_build_object(
    'id', p.id, 'submissionId', p.submission_id, 'cause', p.cause, 'drillId', p.drill_id,
    'drillVersion', p.drill_version, 'exaggeration', p.exaggeration, 'place', p.place,
    'weeklyMinutes', p.weekly_minutes, 'rung', p.rung, 'status', p.status, 'holdReason', p.hold_reason,
    'createdAt', public.instant_text(p.created_at),
    'entries', (SELECT coalesce(json_agg(json_build_object('id', e.id, 'rung', e.rung, 'balls', e.balls,
        'clean', e.clean, 'filmed', e.filmed, 'pain', e.pain, 'localDate', e.local_date,
        'at', public.instant_text(e.at), 'verdict', e.verdict) ORDER BY e.at DESC, e.id DESC), '[]'::json)
      FROM (SELECT * FROM public.practice_entry WHERE academy_id = p_academy AND programme_id = p.id
        ORDER BY at DESC, id DESC LIMIT 10) e)
  )
  FROM public.programme p
  WHERE p.academy_id = p_academy AND p.student_id = p_student AND p.status IN ('open', 'held')
$$;

-- All that the review screen needs of one submission; null when the academy has no such submission.
CREATE FUNCTION public.open_submission(p_academy uuid, p_submission uuid) RETURNS json
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
          'sentAt', public.instant_text(r.sent_at), 'readAt', public.instant_text(r.read_at))
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

GRANT EXECUTE ON FUNCTION
  public.enter_academy(uuid), public.instant_text(timestamptz), public.clips_document(uuid, uuid),
  public.programme_document(uuid, uuid), public.open_submission(uuid, uuid),
  public.inbox_page(uuid, integer, timestamptz, uuid, text, text, text, timestamptz)
TO app;
