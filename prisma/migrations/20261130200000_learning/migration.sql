-- What an academy learns of its own: on which swings the order of causes is held back until a coach has named one, which
-- choices count, and since when.
-- Locks: academy, submission and diagnosis wholly while columns are added (defaults are constants, no rewrite),
-- milliseconds; the indexes are empty when they are built, one pass over diagnosis.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.academy
  -- Since when swings may be held back and choices count; null: nothing is learned, the library's rates hold.
  ADD COLUMN learning_since timestamptz(3),
  -- Choices before this are no longer counted.
  ADD COLUMN learning_reset_at timestamptz(3);
GRANT UPDATE (learning_since, learning_reset_at) ON public.academy TO app;

-- A coach who could not tell asked for the order of causes: from then on it is shown.
ALTER TABLE public.submission ADD COLUMN order_shown_at timestamptz(3);
GRANT UPDATE (order_shown_at) ON public.submission TO app;

ALTER TABLE public.diagnosis
  ADD COLUMN blind boolean NOT NULL DEFAULT false,
  ADD COLUMN views text[] NOT NULL DEFAULT '{}',
  -- The choice of its swing that is learned from: one at most.
  ADD COLUMN counted boolean NOT NULL DEFAULT false,
  ADD CONSTRAINT diagnosis_counted_is_free CHECK (NOT counted OR blind OR overruled);
GRANT UPDATE (counted) ON public.diagnosis TO app;
CREATE UNIQUE INDEX diagnosis_counted_once ON public.diagnosis (academy_id, submission_id) WHERE counted;
CREATE INDEX diagnosis_counted ON public.diagnosis (academy_id, at) WHERE counted;

-- What an academy has learned up to now, counted by fault, cause and views; with a submission, whether its order was asked
-- for and what was named before it was shown. Reads the counted choices only, along their index.
CREATE FUNCTION public.learned(p_academy uuid, p_submission uuid, p_now timestamptz) RETURNS json
LANGUAGE plpgsql AS $$
BEGIN
  PERFORM public.enter_academy(p_academy);
  RETURN (
    SELECT json_build_object(
      'since', public.instant_text(a.learning_since),
      'resetAt', public.instant_text(a.learning_reset_at),
      'orderShownAt', (SELECT public.instant_text(s.order_shown_at) FROM public.submission s
        WHERE s.academy_id = p_academy AND s.id = p_submission),
      'named', (SELECT json_build_object('diagnosisId', d.id, 'causeId', d.chosen_cause) FROM public.diagnosis d
        WHERE d.academy_id = p_academy AND d.submission_id = p_submission AND d.blind ORDER BY d.at, d.id LIMIT 1),
      'choices', (SELECT coalesce(json_agg(json_build_object('fault', c.fault, 'causeId', c.chosen_cause,
          'views', c.views, 'blind', c.blind, 'overruled', c.overruled, 'swings', c.swings)
          ORDER BY c.fault, c.chosen_cause, c.views, c.blind, c.overruled), '[]'::json)
        FROM (SELECT d.fault, d.chosen_cause, d.views, d.blind, d.overruled, count(*)::integer AS swings
          FROM public.diagnosis d
          WHERE d.academy_id = p_academy AND d.counted AND d.at <= p_now
            AND d.at >= coalesce(a.learning_reset_at, '-infinity'::timestamptz)
          GROUP BY d.fault, d.chosen_cause, d.views, d.blind, d.overruled) c))
    FROM public.academy a WHERE a.id = p_academy
  );
END
$$;
REVOKE ALL ON FUNCTION public.learned(uuid, uuid, timestamptz) FROM public;
GRANT EXECUTE ON FUNCTION public.learned(uuid, uuid, timestamptz) TO app;
