-- A correction of a sent reply may change its film: what went with it before is kept beside the words it had.
-- Locks: reply_version wholly while a nullable column is added (no rewrite), milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.reply_version ADD COLUMN teaching_clip jsonb;
