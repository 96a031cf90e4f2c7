/** Where nobody is reached: `.example` belongs to no one. */
export const emailOf = (academy: { readonly slug: string }, key: string): string =>
  `${key}@${academy.slug}.example`;
