/** Breaks words into lines of at most `letters`, a longer word staying whole. */
export const inLines = (words: string, letters: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > letters) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
};
