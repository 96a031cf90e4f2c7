import type { Reading } from '@ballfirst/swing/measurement';

/**
 * How the errors of readings go together: readings that share a click, a shirt, the turn of the camera or its scale err
 * together by what that source moves each of them.
 *
 * @param readings - of one swing, or with the sources of several clips numbered apart; without sources they err alone
 * @returns n rows of n, the squares of the doubts on the diagonal
 * @source JCGM 100:2008, equation F.2, with the sources that `propagateSources` found
 */
export function errorCovariance(readings: readonly Reading[]): Float64Array {
  const n = readings.length;
  const covariance = new Float64Array(n * n);
  // Readings and what moves them, source by source: a swing has a hundred, most of them felt by two or three readings.
  const feeling: number[][] = [];
  const moved: number[][] = [];
  readings.forEach(({ u, felt }, at) => {
    covariance[at * n + at] = u * u;
    for (let i = 0; i < (felt?.sources.length ?? 0); i += 1) {
      const source = felt?.sources[i] ?? 0;
      const effect = felt?.effects[i] ?? 0;
      const others = feeling[source];
      const theirs = moved[source];
      if (others === undefined || theirs === undefined) {
        feeling[source] = [at];
        moved[source] = [effect];
        continue;
      }
      for (let k = 0; k < others.length; k += 1) {
        const other = others[k] ?? at;
        if (other === at) continue;
        const joint = effect * (theirs[k] ?? 0);
        covariance[at * n + other] = (covariance[at * n + other] ?? 0) + joint;
        covariance[other * n + at] = (covariance[other * n + at] ?? 0) + joint;
      }
      others.push(at);
      theirs.push(effect);
    }
  });
  return covariance;
}
