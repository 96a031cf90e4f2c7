/**
 * Log likelihood ratio of a sign that is seen or not seen.
 *
 * @param seen - whether the sign is there
 * @param sensitivity - P(seen | cause), strictly between 0 and 1
 * @param specificity - P(not seen | no cause), strictly between 0 and 1
 * @returns natural logarithm of the ratio
 * @throws RangeError when a share is not strictly between 0 and 1
 * @source Sackett et al., Clinical Epidemiology: sens / (1 - spec) and (1 - sens) / spec
 * @example Math.exp(observedSignLogRatio(true, 0.9, 0.85)) // 6
 */
export function observedSignLogRatio(seen: boolean, sensitivity: number, specificity: number): number {
  for (const share of [sensitivity, specificity]) {
    if (!(share > 0 && share < 1))
      throw new RangeError('Sensitivity and specificity lie strictly between 0 and 1.');
  }
  return seen ? Math.log(sensitivity / (1 - specificity)) : Math.log((1 - sensitivity) / specificity);
}
