import type { EventKind } from '@ballfirst/contracts/events';
import type { Job } from './job.ts';
import { countCorrected } from './jobs/count-corrected.ts';
import { drawCorrectedReply } from './jobs/draw-corrected-reply.ts';
import { drawSentReply } from './jobs/draw-sent-reply.ts';
import { endTrials } from './jobs/end-trials.ts';
import { eraseClips } from './jobs/erase-clips.ts';
import { expireUploads } from './jobs/expire-uploads.ts';
import { finishReplies } from './jobs/finish-replies.ts';
import { lapseClaims } from './jobs/lapse-claims.ts';
import { lookAfterStudents } from './jobs/look-after-students.ts';
import { lookAtClip } from './jobs/look-at-clip.ts';
import { placeStudentAgain } from './jobs/place-student-again.ts';
import { prepareClip } from './jobs/prepare-clip.ts';
import { raisePain } from './jobs/raise-pain.ts';
import { raiseTrialEndings } from './jobs/raise-trial-endings.ts';
import { reconcileClips } from './jobs/reconcile-clips.ts';
import { reconcileLooks } from './jobs/reconcile-looks.ts';
import { reconcileStills } from './jobs/reconcile-stills.ts';
import { rollUpPractice } from './jobs/roll-up-practice.ts';
import { rollUpSubmission } from './jobs/roll-up-submission.ts';
import { scheduleFirstCheckIn } from './jobs/schedule-first-check-in.ts';
import { sealAudit } from './jobs/seal-audit.ts';
import { sendCheckIns } from './jobs/send-check-ins.ts';
import { writeCheckIn } from './jobs/write-check-in.ts';
import { writeClipRefused } from './jobs/write-clip-refused.ts';
import { writeFilmAgain } from './jobs/write-film-again.ts';
import { writeGuardian } from './jobs/write-guardian.ts';
import { writeInvitation } from './jobs/write-invitation.ts';
import { writeJoinAsked } from './jobs/write-join-asked.ts';
import { writeNudge } from './jobs/write-nudge.ts';
import { writePainHeld } from './jobs/write-pain-held.ts';
import { writePainReported } from './jobs/write-pain-reported.ts';
import { writeQuestionAnswered } from './jobs/write-question-answered.ts';
import { writeReplyCorrected } from './jobs/write-reply-corrected.ts';
import { writeReplySent } from './jobs/write-reply-sent.ts';
import { writeReset } from './jobs/write-reset.ts';
import { writeStanding } from './jobs/write-standing.ts';
import { writeWelcome } from './jobs/write-welcome.ts';

/** Every job that answers an event. One event may bring several jobs; some events bring none. */
const eventJobs = [
  prepareClip,
  writeWelcome,
  writeGuardian,
  writeReset,
  writeInvitation,
  writeReplySent,
  writeReplyCorrected,
  drawSentReply,
  drawCorrectedReply,
  writeFilmAgain,
  writeClipRefused,
  writePainHeld,
  writePainReported,
  writeCheckIn,
  writeNudge,
  writeQuestionAnswered,
  writeJoinAsked,
  writeStanding,
  scheduleFirstCheckIn,
  raisePain,
  placeStudentAgain,
  rollUpPractice,
  rollUpSubmission,
  countCorrected,
] as const;

/** What runs at every tick, whatever happened. */
export const ticks: readonly Job[] = [
  finishReplies,
  sendCheckIns,
  lookAfterStudents,
  endTrials,
  raiseTrialEndings,
  lapseClaims,
  eraseClips,
  sealAudit,
  reconcileClips,
  reconcileStills,
  reconcileLooks,
  expireUploads,
];

/** What only other jobs ask for. */
const askedFor: readonly Job[] = [lookAtClip];

const byName = new Map<string, Job>([...eventJobs, ...ticks, ...askedFor].map((it) => [it.name, it]));

export const jobsOn = (kind: EventKind): readonly Job[] => eventJobs.filter((it) => it.on === kind);

/** @throws RangeError for a job this version does not know: an older or newer worker runs beside this one */
export const jobNamed = (name: string): Job => {
  const found = byName.get(name);
  if (!found) throw new RangeError(`This worker knows no job named ${name}.`);
  return found;
};
