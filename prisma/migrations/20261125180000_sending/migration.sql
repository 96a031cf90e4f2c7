-- A reply is on its way for half a minute, in which its coach may take it back; a sent one is corrected with history.
-- Locks: reply wholly while columns and a check change: the check is added unvalidated, then validated in a scan that lets
-- writes through; the new table is empty.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.reply
  ADD COLUMN sends_at timestamptz(3),
  ADD COLUMN corrected_at timestamptz(3),
  DROP CONSTRAINT reply_status,
  ADD CONSTRAINT reply_status CHECK (status IN ('draft', 'sending', 'sent')) NOT VALID,
  ADD CONSTRAINT reply_sends_at CHECK ((status = 'sending') = (sends_at IS NOT NULL)) NOT VALID;
ALTER TABLE public.reply VALIDATE CONSTRAINT reply_status;
ALTER TABLE public.reply VALIDATE CONSTRAINT reply_sends_at;
GRANT UPDATE (sends_at, corrected_at) ON public.reply TO app;
CREATE INDEX reply_sending ON public.reply (sends_at) WHERE status = 'sending';

-- What a sent reply said before it was corrected.
CREATE TABLE public.reply_version (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  reply_id uuid NOT NULL,
  words text NOT NULL,
  by_membership uuid NOT NULL,
  -- When these words were sent, or corrected last.
  at timestamptz(3) NOT NULL,
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, reply_id) REFERENCES public.reply (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE
);
CREATE INDEX reply_version_academy_id_reply_id_at_idx ON public.reply_version (academy_id, reply_id, at);
ALTER TABLE public.reply_version ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.reply_version FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.reply_version TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.reply_version TO app;

GRANT SELECT (academy_id, id, status, sends_at) ON public.reply TO crossing;
CREATE POLICY replies_on_their_way ON public.reply FOR SELECT TO crossing USING (true);

-- Replies whose half minute is over.
CREATE FUNCTION crossing.due_replies(p_now timestamptz, p_limit integer)
RETURNS TABLE ("academyId" uuid, "replyId" uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, id FROM public.reply
  WHERE status = 'sending' AND sends_at <= p_now ORDER BY sends_at, id LIMIT p_limit
$$;
GRANT EXECUTE ON FUNCTION crossing.due_replies(timestamptz, integer) TO app;
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.due_replies(timestamptz, integer) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;

-- Everything the review screen needs, now with when a reply goes out and when it was corrected.
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
          'sendsAt', public.instant_text(r.sends_at), 'correctedAt', public.instant_text(r.corrected_at))
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
