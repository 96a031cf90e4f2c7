-- The tips of both shoes can be marked: seen from behind, with a stick on the target line, they tell where the feet aim.
-- Locks: mark wholly while its check is exchanged; the new check reads the table once.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.mark
  DROP CONSTRAINT mark_point,
  ADD CONSTRAINT mark_point CHECK (point IN (
    'ball', 'lead-heel', 'trail-heel', 'lead-ankle', 'trail-ankle', 'hip-middle', 'neck-base', 'head-centre',
    'lead-shoulder', 'lead-elbow', 'lead-wrist', 'grip-end', 'clubhead', 'shaft-mid', 'lead-thigh-inside',
    'thigh-front', 'seat-line', 'toe-line', 'lead-toe', 'trail-toe',
    'hands', 'target-stick', 'target-stick-ahead'));
