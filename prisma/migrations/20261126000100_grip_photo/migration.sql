-- A still of the hands that goes with a swing: it comes the way of a clip, is kept as one, and stands beside the swing,
-- not among its clips.
-- Locks: clip wholly while a nullable column and checks change (no rewrite), milliseconds; the checks are added unvalidated,
-- then validated in a scan that lets writes through; the index is partial and empty, built in one scan that holds writes back.
-- Submission shared for the foreign key.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.clip
  ADD COLUMN photo_of uuid,
  DROP CONSTRAINT clip_view,
  DROP CONSTRAINT clip_swing_length,
  ADD CONSTRAINT clip_view CHECK (view IN ('face-on', 'down-the-line', 'grip-photo')) NOT VALID,
  ADD CONSTRAINT clip_swing_length
    CHECK (swing_length IN ('rehearsal', 'hip-high', 'three-quarter', 'full', 'none')) NOT VALID,
  -- A photo shows no swing and is no clip of one; a clip is no photo of one.
  ADD CONSTRAINT clip_photo CHECK (
    (view = 'grip-photo') = (swing_length = 'none')
    AND (view <> 'grip-photo' OR submission_id IS NULL)
    AND (view = 'grip-photo' OR photo_of IS NULL)) NOT VALID,
  ADD CONSTRAINT clip_academy_id_photo_of_fkey FOREIGN KEY (academy_id, photo_of)
    REFERENCES public.submission (academy_id, id) ON DELETE RESTRICT ON UPDATE CASCADE NOT VALID;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_view;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_swing_length;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_photo;
ALTER TABLE public.clip VALIDATE CONSTRAINT clip_academy_id_photo_of_fkey;
-- One photo for a swing.
CREATE UNIQUE INDEX clip_photo_of ON public.clip (academy_id, photo_of) WHERE photo_of IS NOT NULL;
GRANT UPDATE (photo_of) ON public.clip TO app;
