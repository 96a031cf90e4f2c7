/** One uncertain input of a measurement. `clicked` inputs carry the doubt of clicking, the others what clicking hides. */
export type Input = {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly clicked: boolean;
  /** Inputs of one family share part of their error. */
  readonly family?: string;
};

/** Inputs by name, each added once, read back by index from the vector that is being propagated. */
export type Inputs = {
  readonly list: readonly Input[];
  add(input: Input): number;
};

export function newInputs(): Inputs {
  const list: Input[] = [];
  return {
    list,
    add(input) {
      const known = list.findIndex(({ name }) => name === input.name);
      return known >= 0 ? known : list.push(input) - 1;
    },
  };
}

/**
 * Covariance of the inputs: independent, but for families.
 *
 * @param correlation - between two members of a family, 0..1
 */
export function covarianceOf(list: readonly Input[], correlation: number): readonly (readonly number[])[] {
  return list.map((a, i) =>
    list.map((b, j) => {
      if (i === j) return a.u * a.u;
      return a.family !== undefined && a.family === b.family ? correlation * a.u * b.u : 0;
    }),
  );
}
