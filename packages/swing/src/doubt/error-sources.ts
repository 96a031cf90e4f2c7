/** What may be wrong in a swing, each source independent of the others: cameras, lengths, depths, clothes and clicks. */
export type ErrorSources = {
  /** The number of a source; a new one gets the next. */
  of(name: string, clicked: boolean): number;
  readonly count: number;
  readonly clicked: readonly boolean[];
};

export function errorSources(
  first: readonly { readonly name: string; readonly clicked: boolean }[],
): ErrorSources {
  const clickedOnes = first.map(({ clicked }) => clicked);
  const numbers = new Map(first.map(({ name }, i) => [name, i]));
  return {
    of(name, clicked) {
      const known = numbers.get(name);
      if (known !== undefined) return known;
      numbers.set(name, clickedOnes.length);
      return clickedOnes.push(clicked) - 1;
    },
    get count() {
      return clickedOnes.length;
    },
    clicked: clickedOnes,
  };
}
