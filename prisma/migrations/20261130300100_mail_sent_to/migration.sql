-- To whom a letter went, as it stood on the letter: one to a guardian or to somebody invited goes to no membership's address.
-- Locks: mail wholly while a nullable column is added (no rewrite), milliseconds. Older rows have none.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

ALTER TABLE public.mail ADD COLUMN sent_to text;
