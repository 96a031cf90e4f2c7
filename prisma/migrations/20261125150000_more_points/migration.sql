-- Three more points a coach may mark: the lead elbow, the front of the thighs, the far end of a stick on the target line.
-- Locks: ACCESS EXCLUSIVE on mark while the constraint is swapped; the check reads the whole table once.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.mark
  DROP CONSTRAINT mark_point,
  ADD CONSTRAINT mark_point CHECK (point IN (
    'ball', 'lead-heel', 'trail-heel', 'lead-ankle', 'trail-ankle', 'hip-middle', 'neck-base', 'head-centre',
    'lead-shoulder', 'lead-elbow', 'lead-wrist', 'grip-end', 'clubhead', 'shaft-mid', 'lead-thigh-inside',
    'thigh-front', 'seat-line', 'toe-line', 'hands', 'target-stick', 'target-stick-ahead'));
