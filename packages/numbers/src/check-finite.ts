/** More numbers than any fit or chart of this house has reason to take. */
const mostNumbers = 100_000;

/**
 * Lets a list of numbers pass.
 *
 * @param what - how the list is called in the error
 * @param least - how many there must be
 * @throws RangeError naming the first that is not finite, or the list when it is too short or absurdly long
 * @example checkFinite('times', [1, 2, 3], 2)
 */
export function checkFinite(what: string, values: readonly number[], least = 0): void {
  if (values.length > mostNumbers) throw new RangeError(`${values.length} ${what} are too many.`);
  if (values.length < least)
    throw new RangeError(`${what}: at least ${least} are needed, not ${values.length}.`);
  const wrong = values.findIndex((value) => !Number.isFinite(value));
  if (wrong >= 0) throw new RangeError(`${what}: number ${wrong + 1} is ${String(values[wrong])}.`);
}
