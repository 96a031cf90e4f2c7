import { drills } from '@ballfirst/library/drills';
import { observationByKey } from '@ballfirst/library/observations';
import type { Cause, Sign } from '@ballfirst/library/types';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/definitions/measurement-names';

const nameOfSign = ({ kind, key }: Sign) => {
  if (kind === 'observed') return observationByKey(key)?.question ?? key;
  return isMeasurementKey(key) ? measurementNames[key].name : key;
};
const past = ({ kind, direction = 'above', edge, key }: Sign) => {
  if (kind === 'observed') return 'yes';
  const unit = isMeasurementKey(key) ? ` ${measurementNames[key].unitLabel}` : '';
  return `${direction} ${edge === undefined ? 'its band' : `${edge}${unit}`}`;
};
const listed = (values: Readonly<Record<string, number | undefined>>) =>
  Object.entries(values)
    .map(([id, weight]) => `${id} ${weight}`)
    .join(', ') || 'nothing further';

/** One cause: what it brings about, its signs with direction, sensitivity, specificity and label, and its drills. */
export function causeEntry(cause: Cause): string {
  const names = new Map(drills.map(({ id, name }) => [id, name]));
  const rows = cause.signs.map((sign) =>
    [
      nameOfSign(sign),
      sign.view,
      past(sign),
      String(sign.sensitivity),
      String(sign.specificity),
      sign.ratioAtMost === undefined ? '' : `supports, at most ${sign.ratioAtMost} to 1`,
      sign.source,
    ].join(' | '),
  );
  const unseen = Object.entries(cause.unseen).map(([view, words]) => `- Not seen ${view}: ${words}`);
  return [
    `### ${cause.name} (\`${cause.id}\`)`,
    '',
    `- Group: ${cause.group}. Brings about: ${listed(cause.brings)} (3 strong to 1 weak). May lead to: ${listed(cause.leadsTo)}. ${cause.source}.`,
    ...unseen,
    ...(rows.length === 0
      ? ['- Signs: none; it is asked.']
      : [
          '',
          '| sign | view | when | sensitivity | specificity | limit | label |',
          '| --- | --- | --- | --- | --- | --- | --- |',
          ...rows.map((row) => `| ${row} |`),
          '',
        ]),
    `- Drills, in order: ${cause.drills.map((id) => names.get(id) ?? id).join(', ')}${cause.check === undefined ? '' : `; ${cause.check}`}`,
  ].join('\n');
}
