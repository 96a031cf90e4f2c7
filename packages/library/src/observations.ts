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
  { key: 'tight-hands', question: 'Are the forearms visibly tense before the swing?', view: 'either' },
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
];

const byKey = new Map(observations.map((one) => [one.key, one]));

/** The observation of that key, or nothing. */
export const observationByKey = (key: string): Observation | undefined => byKey.get(key);
