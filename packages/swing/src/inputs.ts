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
  return list.map((a, i) => {
    const row = new Array<number>(list.length).fill(0);
    row[i] = a.u * a.u;
    if (a.family === undefined) return row;
    list.forEach((b, j) => {
      if (j !== i && b.family === a.family) row[j] = correlation * a.u * b.u;
    });
    return row;
  });
}
