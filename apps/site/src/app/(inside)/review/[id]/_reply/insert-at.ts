/** Puts a phrase where the cursor stands, in place of what is selected, with a space on each side that needs one. */
export const insertAt = (
  words: string,
  phrase: string,
  from: number,
  to: number,
): { readonly words: string; readonly cursor: number } => {
  const before = words.slice(0, from);
  const after = words.slice(to);
  const lead = before === '' || /\s$/.test(before) ? '' : ' ';
  const trail = after === '' || /^[\s.,;:!?]/.test(after) ? '' : ' ';
  const put = `${before}${lead}${phrase}`;
  return { words: `${put}${trail}${after}`, cursor: put.length };
};
