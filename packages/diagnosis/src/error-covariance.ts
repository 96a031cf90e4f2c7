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
  // What moves which reading by how much, chained by source: a swing has a hundred, most of them felt by two or three.
  const lastOf: number[] = [];
  const before: number[] = [];
  const moved: number[] = [];
  const effects: number[] = [];
  readings.forEach(({ u, felt }, at) => {
    covariance[at * n + at] = u * u;
    for (let i = 0; i < (felt?.sources.length ?? 0); i += 1) {
      const source = felt?.sources[i] ?? 0;
      const effect = felt?.effects[i] ?? 0;
      const last = lastOf[source] ?? -1;
      for (let entry = last; entry >= 0; entry = before[entry] ?? -1) {
        const other = moved[entry] ?? at;
        if (other === at) continue;
        const joint = effect * (effects[entry] ?? 0);
        covariance[at * n + other] = (covariance[at * n + other] ?? 0) + joint;
        covariance[other * n + at] = (covariance[other * n + at] ?? 0) + joint;
      }
      lastOf[source] = moved.push(at) - 1;
      effects.push(effect);
      before.push(last);
    }
  });
  return covariance;
}
