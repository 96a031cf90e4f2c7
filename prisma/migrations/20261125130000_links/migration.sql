-- Single-use links by mail: a new password for whoever forgot it, a place on the staff for whoever is invited.
-- Locks: none beyond the catalog; both tables are new.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE TABLE identity.link (
  id uuid PRIMARY KEY,
  kind text NOT NULL CHECK (kind IN ('reset', 'invitation')),
  token_hash bytea NOT NULL UNIQUE CHECK (octet_length(token_hash) = 32),
  person_id uuid REFERENCES identity.person (id) ON DELETE CASCADE ON UPDATE CASCADE,
  academy_id uuid,
  invitation_id uuid,
  created_at timestamptz(3) NOT NULL,
  expires_at timestamptz(3) NOT NULL,
  used_at timestamptz(3),
  CHECK ((kind = 'reset') = (person_id IS NOT NULL)),
  CHECK ((kind = 'invitation') = (academy_id IS NOT NULL AND invitation_id IS NOT NULL))
);
CREATE INDEX link_person_id_idx ON identity.link (person_id);
CREATE INDEX link_academy_id_invitation_id_idx ON identity.link (academy_id, invitation_id);
ALTER TABLE identity.link ENABLE ROW LEVEL SECURITY;
ALTER TABLE identity.link FORCE ROW LEVEL SECURITY;
GRANT SELECT, INSERT, UPDATE (used_at) ON identity.link TO crossing;
CREATE POLICY links_by_token ON identity.link TO crossing USING (true) WITH CHECK (true);

CREATE TABLE public.invitation (
  academy_id uuid NOT NULL REFERENCES public.academy (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  id uuid NOT NULL,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  email text NOT NULL CHECK (email = lower(email)),
  role text NOT NULL CHECK (role IN ('coach', 'manager')),
  by_membership uuid NOT NULL,
  created_at timestamptz(3) NOT NULL,
  expires_at timestamptz(3) NOT NULL,
  accepted_at timestamptz(3),
  revoked_at timestamptz(3),
  PRIMARY KEY (academy_id, id),
  FOREIGN KEY (academy_id, by_membership) REFERENCES public.membership (academy_id, id)
    ON DELETE RESTRICT ON UPDATE CASCADE
);
-- One open invitation an address.
CREATE UNIQUE INDEX invitation_open_email ON public.invitation (academy_id, email)
  WHERE accepted_at IS NULL AND revoked_at IS NULL;
ALTER TABLE public.invitation ENABLE ROW LEVEL SECURITY;
ALTER TABLE public.invitation FORCE ROW LEVEL SECURITY;
CREATE POLICY rows_of_own_academy ON public.invitation TO app
  USING (academy_id = (SELECT public.current_academy()))
  WITH CHECK (academy_id = (SELECT public.current_academy()));
GRANT SELECT, INSERT ON public.invitation TO app;
GRANT UPDATE (accepted_at, revoked_at, expires_at) ON public.invitation TO app;

-- A new link; the unused ones before it for the same person or invitation stop working.
CREATE FUNCTION crossing.open_link(p_id uuid, p_kind text, p_token_hash bytea, p_person uuid, p_academy uuid, p_invitation uuid, p_now timestamptz, p_expires_at timestamptz)
RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE identity.link SET used_at = p_now
  WHERE kind = p_kind AND used_at IS NULL
    AND (person_id = p_person OR (academy_id = p_academy AND invitation_id = p_invitation));
  INSERT INTO identity.link (id, kind, token_hash, person_id, academy_id, invitation_id, created_at, expires_at)
  VALUES (p_id, p_kind, p_token_hash, p_person, p_academy, p_invitation, p_now, p_expires_at);
END
$$;

-- The invitation behind a link that still works.
CREATE FUNCTION crossing.invitation_of_link(p_token_hash bytea, p_now timestamptz)
RETURNS TABLE ("academyId" uuid, "invitationId" uuid)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT academy_id, invitation_id FROM identity.link
  WHERE token_hash = p_token_hash AND kind = 'invitation' AND used_at IS NULL AND expires_at > p_now
$$;

-- Uses a link up: new password, every session of the person ended. Null when the link does not work.
CREATE FUNCTION crossing.reset_password(p_token_hash bytea, p_hash text, p_now timestamptz)
RETURNS uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE person uuid;
BEGIN
  UPDATE identity.link SET used_at = p_now
  WHERE token_hash = p_token_hash AND kind = 'reset' AND used_at IS NULL AND expires_at > p_now
  RETURNING person_id INTO person;
  IF person IS NULL THEN RETURN NULL; END IF;
  UPDATE identity.credential SET hash = p_hash, changed_at = p_now
  WHERE person_id = person AND kind = 'password';
  UPDATE identity.session SET revoked_at = p_now WHERE person_id = person AND revoked_at IS NULL;
  RETURN person;
END
$$;

GRANT EXECUTE ON FUNCTION
  crossing.open_link(uuid, text, bytea, uuid, uuid, uuid, timestamptz, timestamptz),
  crossing.invitation_of_link(bytea, timestamptz),
  crossing.reset_password(bytea, text, timestamptz)
TO app;
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.open_link(uuid, text, bytea, uuid, uuid, uuid, timestamptz, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.invitation_of_link(bytea, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.reset_password(bytea, text, timestamptz) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
