type Naming = { readonly cause: string | null; readonly moreCauses: readonly string[] };

/** The causes that a reply names, the one it is about first: those a film that goes with it may be about. */
export const namedCauses = ({ cause, moreCauses }: Naming): string[] =>
  cause === null ? [...moreCauses] : [cause, ...moreCauses];
