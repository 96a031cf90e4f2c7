-- What signing in must look up across academies: functions of role `crossing`, run by `app`. prisma/crossings.md says why.
-- Locks: none beyond the catalog and, for the policies, each table for milliseconds.
SET LOCAL lock_timeout = '3s';
SET LOCAL statement_timeout = '60s';

CREATE SCHEMA crossing;
GRANT USAGE ON SCHEMA crossing TO app;
GRANT USAGE ON SCHEMA identity, system, public, crossing TO crossing;

GRANT SELECT, INSERT ON identity.person TO crossing;
GRANT SELECT, INSERT, UPDATE (hash, changed_at) ON identity.credential TO crossing;
GRANT SELECT, INSERT, UPDATE (token_hash, former_hash, academy_id, rotated_at, seen_at, revoked_at)
  ON identity.session TO crossing;
GRANT SELECT, INSERT, UPDATE ON identity.attempt TO crossing;
CREATE POLICY people_for_sign_in ON identity.person TO crossing USING (true) WITH CHECK (true);
CREATE POLICY credentials_for_sign_in ON identity.credential TO crossing USING (true) WITH CHECK (true);
CREATE POLICY sessions_for_sign_in ON identity.session TO crossing USING (true) WITH CHECK (true);
CREATE POLICY attempts_for_limits ON identity.attempt TO crossing USING (true) WITH CHECK (true);

GRANT SELECT (id, slug, name, zone, promise_hours, trial_days, trial_starts, price_words, consent_age, created_at)
  ON public.academy TO crossing;
GRANT SELECT (academy_id, id, person_id, role, ended_at) ON public.membership TO crossing;
GRANT SELECT (academy_id, id, membership_id, standing, trial_ends_at) ON public.student TO crossing;
CREATE POLICY academies_for_sign_in ON public.academy FOR SELECT TO crossing USING (true);
CREATE POLICY memberships_for_sign_in ON public.membership FOR SELECT TO crossing USING (true);
CREATE POLICY students_for_sign_in_and_trials ON public.student FOR SELECT TO crossing USING (true);

-- Session to actor: on every request, so one statement.
CREATE FUNCTION crossing.session_actor(p_token_hash bytea, p_now timestamptz, p_grace_seconds integer)
RETURNS TABLE (
  "sessionId" uuid, "personId" uuid, name text, email text,
  "academyId" uuid, "academySlug" text, "academyName" text, "academyZone" text,
  "membershipId" uuid, role text, "studentId" uuid,
  "createdAt" timestamptz, "rotatedAt" timestamptz, "seenAt" timestamptz, "expiresAt" timestamptz, former boolean
)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
#variable_conflict use_column
BEGIN
  RETURN QUERY
  SELECT s.id, p.id, p.name, p.email, a.id, a.slug, a.name, a.zone, m.id, m.role, t.id,
    s.created_at::timestamptz, s.rotated_at::timestamptz, s.seen_at::timestamptz, s.expires_at::timestamptz,
    s.token_hash <> p_token_hash
  FROM (
    SELECT * FROM identity.session WHERE token_hash = p_token_hash
    UNION ALL
    SELECT * FROM identity.session
    WHERE former_hash = p_token_hash AND rotated_at > p_now - make_interval(secs => p_grace_seconds)
  ) s
  JOIN identity.person p ON p.id = s.person_id
  LEFT JOIN public.membership m
    ON m.academy_id = s.academy_id AND m.person_id = s.person_id AND m.ended_at IS NULL
  LEFT JOIN public.academy a ON a.id = m.academy_id
  LEFT JOIN public.student t ON t.academy_id = m.academy_id AND t.membership_id = m.id
  WHERE s.revoked_at IS NULL AND s.expires_at > p_now
  LIMIT 1;
END
$$;

-- The account behind an address, with the hash to check the password against.
CREATE FUNCTION crossing.sign_in_lookup(p_email text)
RETURNS TABLE ("personId" uuid, name text, hash text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT p.id, p.name, c.hash
  FROM identity.person p JOIN identity.credential c ON c.person_id = p.id AND c.kind = 'password'
  WHERE p.email = lower(p_email)
$$;

-- A new account; false when the address is taken.
CREATE FUNCTION crossing.create_person(p_id uuid, p_email text, p_name text, p_hash text, p_now timestamptz)
RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  INSERT INTO identity.person (id, email, name, created_at) VALUES (p_id, lower(p_email), p_name, p_now)
  ON CONFLICT (email) DO NOTHING;
  IF NOT FOUND THEN RETURN false; END IF;
  INSERT INTO identity.credential (person_id, kind, hash, changed_at) VALUES (p_id, 'password', p_hash, p_now);
  RETURN true;
END
$$;

-- A new hash for a person's password.
CREATE FUNCTION crossing.change_password(p_person uuid, p_hash text, p_now timestamptz)
RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH changed AS (
    UPDATE identity.credential SET hash = p_hash, changed_at = p_now
    WHERE person_id = p_person AND kind = 'password' RETURNING 1
  )
  SELECT EXISTS (SELECT FROM changed)
$$;

-- A new session.
CREATE FUNCTION crossing.open_session(p_id uuid, p_person uuid, p_token_hash bytea, p_academy uuid, p_now timestamptz, p_expires_at timestamptz, p_device text)
RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  INSERT INTO identity.session
    (id, person_id, token_hash, academy_id, created_at, rotated_at, seen_at, expires_at, device)
  VALUES (p_id, p_person, p_token_hash, p_academy, p_now, p_now, p_now, p_expires_at, p_device)
$$;

-- A new token for a live session; false when another request rotated first.
CREATE FUNCTION crossing.rotate_session(p_token_hash bytea, p_new_hash bytea, p_now timestamptz)
RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH rotated AS (
    UPDATE identity.session s
    SET former_hash = s.token_hash, token_hash = p_new_hash, rotated_at = p_now, seen_at = greatest(s.seen_at, p_now)
    WHERE s.token_hash = p_token_hash AND s.revoked_at IS NULL AND s.expires_at > p_now RETURNING 1
  )
  SELECT EXISTS (SELECT FROM rotated)
$$;

-- When a session was last seen, forward only.
CREATE FUNCTION crossing.touch_session(p_session uuid, p_now timestamptz)
RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  UPDATE identity.session SET seen_at = p_now WHERE id = p_session AND seen_at < p_now AND revoked_at IS NULL
$$;

-- Sign-out here.
CREATE FUNCTION crossing.close_session(p_token_hash bytea, p_now timestamptz)
RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH closed AS (
    UPDATE identity.session SET revoked_at = p_now
    WHERE (token_hash = p_token_hash OR former_hash = p_token_hash) AND revoked_at IS NULL RETURNING 1
  )
  SELECT EXISTS (SELECT FROM closed)
$$;

-- Sign-out everywhere.
CREATE FUNCTION crossing.close_sessions_of_person(p_person uuid, p_now timestamptz)
RETURNS integer
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH closed AS (
    UPDATE identity.session SET revoked_at = p_now
    WHERE person_id = p_person AND revoked_at IS NULL AND expires_at > p_now RETURNING 1
  )
  SELECT count(*)::integer FROM closed
$$;

-- The academy a session speaks in, among those its person belongs to.
CREATE FUNCTION crossing.choose_academy(p_token_hash bytea, p_academy uuid, p_now timestamptz)
RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  WITH chosen AS (
    UPDATE identity.session s SET academy_id = p_academy
    WHERE (s.token_hash = p_token_hash OR s.former_hash = p_token_hash)
      AND s.revoked_at IS NULL AND s.expires_at > p_now
      AND EXISTS (SELECT FROM public.membership m
        WHERE m.academy_id = p_academy AND m.person_id = s.person_id AND m.ended_at IS NULL)
    RETURNING 1
  )
  SELECT EXISTS (SELECT FROM chosen)
$$;

-- The academies of a person.
CREATE FUNCTION crossing.memberships_of_person(p_person uuid)
RETURNS TABLE ("academyId" uuid, slug text, name text, "membershipId" uuid, role text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT a.id, a.slug, a.name, m.id, m.role
  FROM public.membership m JOIN public.academy a ON a.id = m.academy_id
  WHERE m.person_id = p_person AND m.ended_at IS NULL
  ORDER BY a.name, a.id
$$;

-- Tries under a key in a running window, this one included.
CREATE FUNCTION crossing.count_attempt(p_key text, p_window_seconds integer, p_now timestamptz)
RETURNS integer
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  INSERT INTO identity.attempt AS a (key, window_start, count) VALUES (p_key, p_now, 1)
  ON CONFLICT (key) DO UPDATE SET
    window_start = CASE WHEN a.window_start > p_now - make_interval(secs => p_window_seconds)
      THEN a.window_start ELSE p_now END,
    count = CASE WHEN a.window_start > p_now - make_interval(secs => p_window_seconds)
      THEN a.count + 1 ELSE 1 END
  RETURNING a.count
$$;

-- The front of an academy, for a visitor who has not signed in.
CREATE FUNCTION crossing.academy_by_slug(p_slug text)
RETURNS TABLE (
  id uuid, slug text, name text, zone text, "promiseHours" integer, "trialDays" integer, "trialStarts" text,
  "priceWords" text, "consentAge" integer
)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT id, slug, name, zone, promise_hours, trial_days, trial_starts, price_words, consent_age
  FROM public.academy WHERE slug = p_slug
$$;

GRANT EXECUTE ON FUNCTION
  crossing.session_actor(bytea, timestamptz, integer),
  crossing.sign_in_lookup(text),
  crossing.create_person(uuid, text, text, text, timestamptz),
  crossing.change_password(uuid, text, timestamptz),
  crossing.open_session(uuid, uuid, bytea, uuid, timestamptz, timestamptz, text),
  crossing.rotate_session(bytea, bytea, timestamptz),
  crossing.touch_session(uuid, timestamptz),
  crossing.close_session(bytea, timestamptz),
  crossing.close_sessions_of_person(uuid, timestamptz),
  crossing.choose_academy(bytea, uuid, timestamptz),
  crossing.memberships_of_person(uuid),
  crossing.count_attempt(text, integer, timestamptz),
  crossing.academy_by_slug(text)
TO app;

-- From here on they run as `crossing`, which may make functions only for this moment.
GRANT CREATE ON SCHEMA crossing TO crossing;
ALTER FUNCTION crossing.session_actor(bytea, timestamptz, integer) OWNER TO crossing;
ALTER FUNCTION crossing.sign_in_lookup(text) OWNER TO crossing;
ALTER FUNCTION crossing.create_person(uuid, text, text, text, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.change_password(uuid, text, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.open_session(uuid, uuid, bytea, uuid, timestamptz, timestamptz, text) OWNER TO crossing;
ALTER FUNCTION crossing.rotate_session(bytea, bytea, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.touch_session(uuid, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.close_session(bytea, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.close_sessions_of_person(uuid, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.choose_academy(bytea, uuid, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.memberships_of_person(uuid) OWNER TO crossing;
ALTER FUNCTION crossing.count_attempt(text, integer, timestamptz) OWNER TO crossing;
ALTER FUNCTION crossing.academy_by_slug(text) OWNER TO crossing;
REVOKE CREATE ON SCHEMA crossing FROM crossing;
