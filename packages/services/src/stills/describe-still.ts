/** A picture of a reply in words, for whoever does not see it: its caption, the marks and the lines that are in it. */
export const describeStill = (
  caption: string,
  marks: readonly string[],
  lines: readonly (string | null)[],
): string => {
  const named = lines.filter((name) => name !== null);
  const told = caption.trim().replace(/[.\s]+$/, '');
  return [
    `${told === '' ? 'A moment of your swing' : told}.`,
    ...(marks.length === 0 ? [] : [`Marked: ${marks.join(', ')}.`]),
    ...(named.length === 0 ? [] : [`Drawn in: ${named.join(', ')}.`]),
  ].join(' ');
};
