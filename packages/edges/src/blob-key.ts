const part = /^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$/;

/** The parts of a key, none of which can leave the store. @throws RangeError for anything else */
export const partsOfKey = (key: string): readonly string[] => {
  const parts = key.split('/');
  if (parts.length > 8 || !parts.every((it) => part.test(it))) throw new RangeError('Not a key for a file.');
  return parts;
};
