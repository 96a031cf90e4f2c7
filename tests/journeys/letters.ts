import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';

/** The letters that the service has written into its folder instead of a mail server. */
export const letters = async (home: string): Promise<string[]> => {
  const folder = path.join(home, 'mail');
  const files = (await readdir(folder)).filter((file) => file.endsWith('.eml'));
  return Promise.all(files.map((file) => readFile(path.join(folder, file), 'utf8')));
};

export const subjectOf = (letter: string): string => /^Subject: (.*)$/m.exec(letter)?.[1] ?? '';
