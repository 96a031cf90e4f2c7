import { arcHeightBehindMm } from '../arc-height.ts';
import { juniorsSentence, keepClearSentence, painSentence } from '../cautions.ts';
import { sessionBallsAtMost } from '../constants.ts';
import { type Cause, type Drill, places, rungs } from '../types.ts';
import { checkStation } from './check-station.ts';

const checkCautions = (drill: Drill, known: ReadonlySet<string>): readonly string[] => {
  const problems: string[] = [];
  for (const caution of drill.cautions) {
    if (!known.has(caution)) problems.push(`has an unknown caution: ${caution}`);
  }
  if (drill.cautions.length === 0) problems.push('has no cautions');
  if (!drill.cautions.includes(painSentence)) problems.push('lacks the sentence about pain');
  if (!drill.cautions.includes(keepClearSentence))
    problems.push('lacks the sentence about keeping others clear');
  if (!drill.cautions.includes(juniorsSentence)) problems.push('lacks the sentence about juniors');
  return problems;
};

const checkLadder = (drill: Drill): readonly string[] => {
  const problems: string[] = [];
  if (drill.ladder.length === 0) problems.push('has no ladder');
  let last = -1;
  for (const rung of drill.ladder) {
    const place = rungs.indexOf(rung.id);
    if (place <= last) problems.push(`rung "${rung.id}" is out of order`);
    last = place;
    if (rung.clean.trim() === '') problems.push(`rung "${rung.id}" does not say what "clean" is`);
    if (rung.balls < 1) problems.push(`rung "${rung.id}" has no swings`);
    if (rung.allOf !== undefined && rung.allOf > rung.balls) {
      problems.push(`rung "${rung.id}" asks for more clean ones than it has swings`);
    }
  }
  return problems;
};

const checkLevels = (drill: Drill): readonly string[] => {
  const problems: string[] = [];
  if (drill.exaggerations.length === 0) problems.push('has no exaggeration');
  for (const { level, obstacle } of drill.exaggerations) {
    if (obstacle !== undefined && arcHeightBehindMm(obstacle.behindMm) < obstacle.heightMm) {
      problems.push(`level "${level}": a sound swing would touch it`);
    }
  }
  return problems;
};

/** What is wrong with a drill, as sentences; none is well. `causes` and `cautions`: those that exist. */
export const checkDrill = (
  drill: Drill,
  causes: ReadonlyMap<string, Pick<Cause, 'drills'>>,
  cautions: ReadonlySet<string>,
): readonly string[] => {
  const problems = [...checkCautions(drill, cautions), ...checkLadder(drill), ...checkLevels(drill)];
  for (const place of places) {
    if (!drill.stations.some((station) => station.place === place))
      problems.push(`has no station for ${place}`);
  }
  for (const station of drill.stations) problems.push(...checkStation(station, drill));
  for (const cause of drill.causes) {
    const named = causes.get(cause);
    if (named === undefined) problems.push(`names an unknown cause "${cause}"`);
    else if (!named.drills.includes(drill.id)) problems.push(`names "${cause}", which does not ask for it`);
  }
  if (drill.causes.length === 0) problems.push('mends no cause');
  if (drill.steps.length === 0) problems.push('has no steps');
  if (drill.dose.trim() === '') problems.push('has no dose');
  if (drill.overCorrection.trim() === '') problems.push('does not say what over-correction to expect');
  if (drill.ballsAtMost > sessionBallsAtMost) problems.push('allows more than 90 balls a session');
  if (drill.source.trim() === '') problems.push('names no source');
  return problems;
};
