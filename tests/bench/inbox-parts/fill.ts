import type pg from 'pg';

export type Filled = { readonly big: string; readonly small: string; readonly coachIds: readonly string[] };

const tally = `jsonb_build_object('balls', 10, 'solid', 4, 'fat', 6, 'thin', 0, 'topped', 0, 'heel', 0, 'toe', 0,
  'shank', 0, 'sky', 0, 'counted', true)`;
const faults = `(ARRAY['fat', 'thin', 'topped', 'shank', 'heel', 'toe', 'sky'])[1 + i % 7]`;

/** One academy with so many submissions of so many students, 55 of 100 waiting, each with a clip. */
async function fillAcademy(
  client: pg.Client,
  academy: string,
  submissions: number,
  students: number,
): Promise<string[]> {
  const ask = (text: string, values: readonly unknown[]) => client.query(text, [...values]);
  await ask(
    `INSERT INTO academy (id, slug, name, zone, working_hours, promise_hours, trial_days, trial_starts, price_words,
      consent_age, safeguard_contact, created_at)
     VALUES ($1::uuid, 'academy-' || $1, 'An academy', 'Europe/Stockholm',
      '{"week": {"mon": [["09:00", "17:00"]]}, "holidays": []}', 24, 14, 'joining', '', 16, '', now())`,
    [academy],
  );
  const { rows } = await ask(
    `INSERT INTO membership (academy_id, id, person_id, role, name, email, zone, created_at)
     SELECT $1, uuidv7(), uuidv7(), 'coach', 'Coach ' || i, 'coach' || i || '@example.test', 'UTC', now()
     FROM generate_series(1, 20) i RETURNING id`,
    [academy],
  );
  await ask(
    `WITH member AS (
       INSERT INTO membership (academy_id, id, person_id, role, name, email, zone, created_at)
       SELECT $1, uuidv7(), uuidv7(), 'student', 'Student ' || i, 'student' || i || '@example.test',
         (ARRAY['UTC', 'Europe/Stockholm', 'America/New_York', 'Asia/Tokyo'])[1 + i % 4], now()
       FROM generate_series(1, $2::int) i RETURNING id)
     INSERT INTO student (academy_id, id, membership_id, hand, age_group, units, standing, trial_started_at,
       trial_ends_at, created_at)
     SELECT $1, uuidv7(), id, 'right', 'adult', 'metric', 'trial', now() - interval '5 days', now() + interval '9 days',
       now() FROM member`,
    [academy, students],
  );
  await ask(
    `WITH student AS (SELECT id, row_number() OVER () - 1 AS at FROM student WHERE academy_id = $1), made AS (
       INSERT INTO submission (academy_id, id, student_id, status, club, lie, tally, lead_fault, start_line, curve,
         typical, note, pain, pain_note, sent_at, answer_by, priority_key, head_start_hours, reasons, answered_at,
         version)
       SELECT $1, uuidv7(), s.id, CASE WHEN (i + i / $3::int) % 20 < 11 THEN 'waiting' ELSE 'answered' END, '8-iron', 'mat', ${tally},
         ${faults}, 'straight', 'none', 'usual', 'The ground comes first, most of all at the end of a bucket.', 'none',
         '', now(), now() + i * interval '1 second', now() + (i::bigint * 7919 % $2::int) * interval '1 second', 6,
         jsonb_build_array(jsonb_build_object('kind', 'fault', 'fault', 'fat', 'probability', 0.93,
           'headStartHours', 7.4), jsonb_build_object('kind', 'promise', 'answerBy', '2026-03-10T09:00:00.000Z')),
         CASE WHEN (i + i / $3::int) % 20 < 11 THEN NULL ELSE now() END, 1
       FROM generate_series(1, $2::int) i JOIN student s ON s.at = i % $3::int
       RETURNING id, student_id)
     INSERT INTO clip (academy_id, id, student_id, submission_id, file_name, view, swing_length, status, length_bytes,
       percent, fence, marks_version, created_at, expires_at)
     SELECT $1, uuidv7(), student_id, id, 'swing.mp4', 'face-on', 'full', 'ready', 1000000, 100, 1, 0, now(), now()
     FROM made`,
    [academy, submissions, students],
  );
  // Half of the students have a programme; a coach in twenty rows at the head has claimed one.
  await ask(
    `WITH programme AS (
       INSERT INTO programme (academy_id, id, student_id, submission_id, cause, drill_id, drill_version, exaggeration,
         place, weekly_minutes, rung, status, created_at)
       SELECT DISTINCT ON (student_id) $1::uuid, uuidv7(), student_id, id, 'hang-back', 'flat-towel', 1, 'mild', 'mat',
         60, 'brush', 'open', now()
       FROM submission WHERE academy_id = $1 AND status = 'answered' RETURNING id, student_id)
     INSERT INTO practice_entry (academy_id, id, student_id, programme_id, rung, balls, clean, filmed, pain,
       local_date, at, verdict)
     SELECT $1, uuidv7(), student_id, id, 'brush', 10, 6, false, 'none', '2026-03-10', now() - i * interval '1 day',
       'stay' FROM programme, generate_series(1, 3) i`,
    [academy],
  );
  await ask(
    `UPDATE submission SET claimed_by = $2, claimed_at = now(), claim_expires_at = now() + interval '1 day'
     WHERE academy_id = $1 AND id IN (SELECT id FROM (
       SELECT id, row_number() OVER (ORDER BY priority_key, id) AS at FROM submission
       WHERE academy_id = $1 AND status = 'waiting') w WHERE at <= 2000 AND at % 20 = 0)`,
    [academy, rows[0]?.id],
  );
  return rows.map((row) => String(row.id));
}

/**
 * The academy that is measured, one with a tenth of its submissions by as many students, and 200 small ones beside them. Written as superuser, without
 * triggers: what is measured is reading.
 */
export async function fill(client: pg.Client, submissions: number): Promise<Filled> {
  await client.query(`SET session_replication_role = replica`);
  const { rows } = await client.query<{ id: string }>('SELECT uuidv7() AS id FROM generate_series(1, 202)');
  const [big = '', small = '', ...beside] = rows.map(({ id }) => id);
  const students = submissions / 50;
  const coachIds = await fillAcademy(client, big, submissions, students);
  await fillAcademy(client, small, submissions / 10, students);
  for (const id of beside) await fillAcademy(client, id, submissions / 2000, 10);
  await client.query(`SET session_replication_role = origin`);
  await client.query('VACUUM ANALYZE');
  // What was filled in is on the disk before anything is timed.
  await client.query('CHECKPOINT');
  return { big, small, coachIds };
}
