import type { Observation } from './types.ts';

/** What a coach sees and taps: yes, no, can't tell. Read as signs by the causes that name them. */
export const observations: readonly Observation[] = [
  {
    key: 'lead-hand-on-lead-half',
    question: 'Does the hollow at the base of the lead thumb lie on the lead half of the shaft?',
    view: 'either',
  },
  {
    key: 'handle-at-mid-body',
    question: 'Does the handle sit at the middle of the body at address?',
    view: 'face-on',
  },
  {
    key: 'stance-off-width',
    question: 'Is the stance clearly wider or narrower than the shoulders?',
    view: 'face-on',
  },
  {
    key: 'tight-hands',
    question: 'Does the player hold on tightly: five or more of ten when asked?',
    view: 'either',
  },
  {
    key: 'trail-hip-outside-foot',
    question: 'Does the trail hip stand outside the trail ankle at the top?',
    view: 'face-on',
  },
  {
    key: 'trail-heel-down',
    question: 'Is the trail heel still flat on the ground at impact?',
    view: 'face-on',
  },
  {
    key: 'falls-back',
    question: 'Does the player fall back on the trail foot at the finish?',
    view: 'face-on',
  },
  {
    key: 'clubhead-in-line-early',
    question: 'Is the clubhead already in line with the lead arm as the hands pass the trail thigh?',
    view: 'face-on',
  },
  { key: 'lead-wrist-cupped', question: 'Is the lead wrist bent back at impact?', view: 'face-on' },
  { key: 'lead-elbow-bends', question: 'Does the lead elbow bend at once after impact?', view: 'face-on' },
  { key: 'chest-leans-ahead', question: 'Does the chest lie ahead of the ball at impact?', view: 'face-on' },
  { key: 'legs-straighten', question: 'Do both legs straighten before impact?', view: 'either' },
  {
    key: 'seat-leaves-line',
    question: 'Does the seat move towards the ball before impact?',
    view: 'down-the-line',
  },
  {
    key: 'shaft-past-parallel',
    question: 'Does the shaft go past parallel to the ground at the top?',
    view: 'either',
  },
  {
    key: 'no-pause-at-top',
    question: 'Does the way down begin before the way back has ended?',
    view: 'either',
  },
  {
    key: 'arms-reach-at-top',
    question: 'Do the arms reach or fold so that their length changes?',
    view: 'face-on',
  },
  {
    key: 'clubhead-inside-hands-down',
    question: 'Is the clubhead inside the hands with the shaft parallel to the ground on the way down?',
    view: 'down-the-line',
  },
  // Set-up.
  {
    key: 'lead-hand-far-over',
    question:
      'Does the hollow at the base of the lead thumb lie past the trail side, three knuckles or more in the player’s view?',
    view: 'either',
  },
  {
    key: 'cramped-at-address',
    question: 'Do the hands hang closer to the thighs than a hand’s width?',
    view: 'down-the-line',
  },
  {
    key: 'reaches-at-address',
    question: 'Do the arms reach out for the ball instead of hanging?',
    view: 'down-the-line',
  },
  {
    key: 'weight-over-toes',
    question: 'Does the weight lie on the toes at address?',
    view: 'down-the-line',
  },
  {
    key: 'tips-over-toes',
    question: 'Does the player tip forward over the toes during the swing?',
    view: 'down-the-line',
  },
  {
    key: 'feet-or-shoulders-off-line',
    question: 'Do feet or shoulders clearly point beside the target?',
    view: 'down-the-line',
  },
  {
    key: 'ball-above-club',
    question: 'With the club on the ground, does more than half of the teed ball show above it?',
    view: 'either',
  },
  {
    key: 'toe-or-heel-in-the-air',
    question: 'Does the sole meet the ground with its toe or its heel in the air?',
    view: 'down-the-line',
  },
  {
    key: 'mat-struck-first',
    question: 'Struck from a mat: does the club bounce or thud before it meets the ball?',
    view: 'either',
  },

  // On the way back and at the top.
  {
    key: 'clubhead-inside-hands-back',
    question:
      'Is the clubhead a head or more inside the hands with the shaft parallel to the ground on the way back?',
    view: 'down-the-line',
  },
  {
    key: 'lead-shoulder-short-of-ball',
    question: 'Does the lead shoulder stop short of the ball line at the top?',
    view: 'face-on',
  },
  {
    key: 'toe-hangs-at-top',
    question: 'Does the toe of the club hang straight down at the top, the lead wrist bent back?',
    view: 'down-the-line',
  },
  {
    key: 'face-looks-up-at-top',
    question: 'Does the face look at the sky at the top, the lead wrist bowed?',
    view: 'down-the-line',
  },

  // On the way down and through.
  {
    key: 'clubhead-outside-hands-down',
    question: 'Is the clubhead outside the hands with the shaft parallel to the ground on the way down?',
    view: 'down-the-line',
  },
  {
    key: 'pockets-hidden-at-impact',
    question: 'Is one of the two back pockets hidden at impact?',
    view: 'down-the-line',
  },
  {
    key: 'hip-outside-lead-foot',
    question: 'Does the lead hip stand outside the lead foot at impact?',
    view: 'face-on',
  },
  {
    key: 'toe-not-up-after-impact',
    question: 'Does the face still look at the sky with the shaft parallel to the ground after impact?',
    view: 'face-on',
  },
  {
    key: 'toe-past-up-after-impact',
    question: 'Does the face look at the ground with the shaft parallel to the ground after impact?',
    view: 'face-on',
  },
];

const byKey = new Map(observations.map((one) => [one.key, one]));

/** The observation of that key, or nothing. */
export const observationByKey = (key: string): Observation | undefined => byKey.get(key);
