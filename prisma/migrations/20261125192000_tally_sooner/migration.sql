-- Every update of a submission checks its tally again, a claim too: the same rule as one expression, without subqueries and
-- without a search path of its own (the body is bound when it is made), costs a tenth.
-- Locks: none beyond the catalog. Nothing is checked anew: the rule is the same.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE OR REPLACE FUNCTION public.is_count(value jsonb) RETURNS boolean
LANGUAGE sql IMMUTABLE
RETURN CASE WHEN jsonb_typeof(value) = 'number'
  THEN value::numeric BETWEEN 0 AND 100 AND value::numeric = trunc(value::numeric)
  ELSE false END;

CREATE OR REPLACE FUNCTION public.is_sound_tally(tally jsonb) RETURNS boolean
LANGUAGE sql IMMUTABLE
RETURN CASE
  WHEN jsonb_typeof(tally) <> 'object' THEN false
  WHEN public.is_count(tally -> 'balls') AND public.is_count(tally -> 'solid') AND public.is_count(tally -> 'fat')
    AND public.is_count(tally -> 'thin') AND public.is_count(tally -> 'topped') AND public.is_count(tally -> 'heel')
    AND public.is_count(tally -> 'toe') AND public.is_count(tally -> 'shank') AND public.is_count(tally -> 'sky')
  THEN (tally -> 'solid')::numeric + (tally -> 'fat')::numeric + (tally -> 'thin')::numeric
    + (tally -> 'topped')::numeric + (tally -> 'heel')::numeric + (tally -> 'toe')::numeric
    + (tally -> 'shank')::numeric + (tally -> 'sky')::numeric <= (tally -> 'balls')::numeric
  ELSE false END;
