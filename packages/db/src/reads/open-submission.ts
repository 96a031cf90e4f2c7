import { namedCall, type Pooled } from '../named-call.ts';

/** Instants inside are ISO 8601 texts (UTC, milliseconds). Null members: not there yet. */
export type OpenSubmission = {
  submission: {
    id: string;
    studentId: string;
    status: string;
    club: string;
    lie: string;
    tally: unknown;
    leadFault: string | null;
    startLine: string;
    curve: string;
    typical: string;
    note: string;
    pain: 'none' | 'new' | 'worse';
    painNote: string;
    painSeenAt: string | null;
    sentAt: string;
    answerBy: string;
    priorityKey: string;
    headStartHours: number;
    reasons: unknown;
    claimedBy: string | null;
    claimedByName: string | null;
    claimedAt: string | null;
    claimExpiresAt: string | null;
    checkInId: string | null;
    answeredAt: string | null;
    version: number;
  };
  student: {
    id: string;
    membershipId: string;
    name: string;
    zone: string;
    hand: 'right' | 'left';
    ageGroup: string;
    units: string;
    usualMiss: string | null;
    daysPerWeek: number | null;
    minutesPerDay: number | null;
    place: string | null;
    goal: string | null;
    standing: string;
    trialStartedAt: string | null;
    trialEndsAt: string | null;
  };
  clips: {
    id: string;
    fileName: string;
    view: string;
    swingLength: string;
    status: string;
    lengthBytes: number;
    createdAt: string;
    percent: number;
    refusal: string | null;
    widthPx: number | null;
    heightPx: number | null;
    frames: number | null;
    fps: number | null;
    durationMs: number | null;
    marksVersion: number;
    suggestion: unknown;
    trail: unknown;
    marks: { position: string; point: string; frame: number; x: number; y: number; source: string }[];
    observations: { key: string; answer: 'yes' | 'no' | 'cannot-tell' }[];
  }[];
  diagnosis: {
    id: string;
    fault: string;
    chosenCause: string;
    setUpTicks: string[];
    inputs: unknown;
    ranking: unknown;
    methodVersion: string;
    overruled: boolean;
    byMembership: string;
    byName: string;
    at: string;
  } | null;
  reply: {
    id: string;
    status: 'draft' | 'sending' | 'sent';
    words: string;
    cause: string | null;
    setUpTicks: string[];
    frames: unknown;
    plan: unknown;
    programmeId: string | null;
    byMembership: string;
    authorName: string;
    version: number;
    updatedAt: string;
    sentAt: string | null;
    sendsAt: string | null;
    correctedAt: string | null;
    readAt: string | null;
    moreCauses: string[];
    moreAgreedAt: string | null;
    teachingClip: unknown;
    withTalk: boolean;
  } | null;
  measurements: {
    clipId: string;
    key: string;
    unit: string;
    value: number;
    u: number;
    bandLow: number | null;
    bandHigh: number | null;
    methodVersion: string;
    at: string;
  }[];
  /** The student's ten submissions before this one, newest first; `cause` once answered. */
  earlier: { id: string; sentAt: string; status: string; cause: string | null }[];
  /** The student's open or held programme with its last ten entries, newest first. */
  programme: {
    id: string;
    submissionId: string;
    cause: string;
    drillId: string;
    drillVersion: number;
    exaggeration: string;
    place: string;
    weeklyMinutes: number;
    secondDrillId: string | null;
    rung: string;
    status: 'open' | 'held';
    holdReason: string | null;
    createdAt: string;
    entries: {
      id: string;
      drillId: string;
      rung: string;
      balls: number;
      clean: number;
      filmed: boolean;
      pain: string;
      localDate: string;
      at: string;
      verdict: string;
    }[];
  } | null;
};

const statement = { name: 'open_submission', text: 'SELECT open_submission($1, $2) AS document' };

/** Everything the review screen needs, in one statement; null when the academy has no such submission. */
export const readOpenSubmission = async (
  db: Pooled,
  query: { academyId: string; submissionId: string },
): Promise<OpenSubmission | null> => {
  const [row] = await namedCall<{ document: OpenSubmission | null }>(db, statement, [
    query.academyId,
    query.submissionId,
  ]);
  return row?.document ?? null;
};
