import type { CameraView, Cause, Drill, Observation } from '../types.ts';

/** What a cause is checked against. */
export type Shelf = {
  readonly causeIds: ReadonlySet<string>;
  readonly drills: ReadonlyMap<string, Drill>;
  readonly observationKeys: ReadonlySet<Observation['key']>;
  readonly bandKeys: ReadonlySet<string>;
};

const views: readonly CameraView[] = ['face-on', 'down-the-line'];

const isShare = (value: number): boolean => value > 0 && value < 1;

const checkSigns = (cause: Cause, shelf: Shelf): readonly string[] => {
  const problems: string[] = [];
  const everUnseen = views.every((view) => cause.unseen[view] !== undefined);
  if (cause.signs.length === 0 && !everUnseen) problems.push('has no signs');
  const keys = cause.signs.map(({ key }) => key);
  if (new Set(keys).size < keys.length) problems.push('has two signs of one measurement or observation');
  for (const sign of cause.signs) {
    const at = `sign "${sign.key}"`;
    if (!isShare(sign.sensitivity) || !isShare(sign.specificity)) {
      problems.push(`${at}: sensitivity and specificity lie between 0 and 1`);
    } else if (sign.sensitivity + sign.specificity <= 1) problems.push(`${at} speaks against its own cause`);
    if (sign.source.trim() === '') problems.push(`${at} names no source`);
    if (sign.kind === 'observed' && !shelf.observationKeys.has(sign.key)) {
      problems.push(`${at} is no known observation`);
    }
    if (sign.kind === 'measured') {
      if (!shelf.bandKeys.has(sign.key)) problems.push(`${at} has no band`);
      if (sign.direction === undefined) problems.push(`${at} has no direction`);
      if (sign.direction === 'outside' && sign.edge !== undefined) {
        problems.push(`${at} is read outside a band and has an edge of its own`);
      }
      if (sign.ratioAtMost !== undefined && !(sign.ratioAtMost > 1)) problems.push(`${at} supports nothing`);
      if (!(sign.sd !== undefined && sign.sd > 0)) problems.push(`${at} has no spread between players`);
    }
  }
  return problems;
};

/** A view that shows a cause has a sign of it; one that does not says so. */
const checkViews = (cause: Cause): readonly string[] =>
  views
    .filter((view) => !cause.signs.some((sign) => sign.view === view || sign.view === 'either'))
    .filter((view) => (cause.unseen[view] ?? '').trim() === '')
    .map((view) => `has no sign ${view} and does not say so`);

const checkDrills = (cause: Cause, shelf: Shelf): readonly string[] => {
  const problems: string[] = [];
  const enough = cause.drills.length >= 2 || (cause.drills.length === 1 && cause.check !== undefined);
  if (!enough) problems.push('has fewer than two drills, or one and a check');
  if (new Set(cause.drills).size < cause.drills.length) problems.push('asks for a drill twice');
  for (const id of cause.drills) {
    const drill = shelf.drills.get(id);
    if (drill === undefined) problems.push(`asks for an unknown drill "${id}"`);
    else if (!drill.causes.includes(cause.id)) problems.push(`asks for "${id}", which does not name it`);
  }
  return problems;
};

/** What is wrong with a cause, as sentences; none is well. */
export const checkCause = (cause: Cause, shelf: Shelf): readonly string[] => {
  const problems = [...checkSigns(cause, shelf), ...checkViews(cause), ...checkDrills(cause, shelf)];
  if (Object.keys(cause.brings).length === 0) problems.push('brings no fault about');
  if (!isShare(cause.baseRate)) problems.push('has a base rate outside 0 to 1');
  if (!(cause.trainability > 0 && cause.trainability <= 1))
    problems.push('has a trainability outside 0 to 1');
  if (cause.forStudent.trim() === '') problems.push('has no sentence for a student');
  for (const [downstream, probability] of Object.entries(cause.leadsTo)) {
    if (downstream === cause.id || !shelf.causeIds.has(downstream)) {
      problems.push(`leads to an unknown cause "${downstream}"`);
    }
    if (!isShare(probability)) problems.push(`leads to "${downstream}" with a probability outside 0 to 1`);
  }
  return problems;
};
