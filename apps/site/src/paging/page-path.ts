/** The address of a list with what was asked of it; what was not asked is left out. */
export const pagePath = (path: string, asked: Readonly<Record<string, string | null>>): string => {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(asked)) if (value !== null) query.set(name, value);
  return query.size === 0 ? path : `${path}?${query}`;
};
