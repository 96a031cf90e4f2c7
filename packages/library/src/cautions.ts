/**
 * Sentences of safety. They stand wherever practice is prescribed. The software names no injury and gives no treatment:
 * it stops the practice and sends the person to a clinician. Local law and licensed practice come first.
 */
export const painSentence =
  'Stop if anything hurts. If a pain is new, is worse than usual or is still there the next day, leave the drill and see a doctor or physiotherapist.';

export const keepClearSentence =
  'Nobody stands within 3 m of your club or in front of you, and nobody stands on the ball side to film: put the phone on a stand.';

export const juniorsSentence =
  'Players under 18 practise with an adult beside them, outside the reach of the club.';

/** The three sentences every drill carries. */
export const everyDrill = [painSentence, keepClearSentence, juniorsSentence] as const;

export const warmUpSentence = 'Move for ten minutes before the first swing: walk, turn, swing slowly.';

export const softOnlySentence =
  'Only soft things lie in the way of the club. Never a stick, a stone or a hard ball.';

export const firmMatSentence =
  'A hard mat hits back: no more than 30 swings, no longer than hip-high, and stop if your wrists or elbows feel it.';

export const ceilingSentence =
  'Indoors: a ceiling of 3 m at least, nothing to break within reach, hip-high at most and slowly.';

export const askFirstSentence =
  'If you are pregnant, have brittle bones, a heart condition or a replaced joint, ask your doctor before you begin.';

export const slowSentence = 'Slow swings only. Never at full speed, never against anything hard.';

export const wristSentence = 'Stop at once if a wrist or an elbow hurts, and leave the drill out that day.';

export const standSafelySentence =
  'If you do not stand safely on one foot, leave both feet flat and only feel the weight.';

export const easyTurnSentence = 'Turn only as far as is easy. Nothing is pulled, held or forced.';

export const freeHeadSentence =
  'Let the head turn with you after the ball. It is never pressed or held still by force.';

export const levelGroundSentence = 'Only on dry ground where your shoes do not slip.';

export const bounceSentence = 'Hard balls never towards a wall or anything hard within 3 m: they come back.';

/** Every sentence a built-in drill may carry beside its own. */
export const cautionSentences: readonly string[] = [
  ...everyDrill,
  warmUpSentence,
  softOnlySentence,
  firmMatSentence,
  ceilingSentence,
  askFirstSentence,
  slowSentence,
  wristSentence,
  standSafelySentence,
  easyTurnSentence,
  freeHeadSentence,
  levelGroundSentence,
  bounceSentence,
];

/** For a drill with swings: warming up, mats, ceilings. */
export const swingCautions: readonly string[] = [
  ...everyDrill,
  warmUpSentence,
  firmMatSentence,
  ceilingSentence,
];

/** Shown when an entry or a swing reports pain that is new or worse. */
export const painHoldSentence =
  'Your practice is on hold, because you told us of a pain. Please see a doctor or physiotherapist before you swing again; your coach has been told. With chest pain, fainting, numbness, weakness in the legs or a blow to the head, call the emergency services now.';

/** What the software says of itself where pain is spoken of. */
export const neverDiagnoseSentence =
  'We teach golf. We cannot say what a pain is or treat it; only a clinician who has seen you can.';
