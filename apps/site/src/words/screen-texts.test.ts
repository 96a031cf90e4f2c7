import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { causes } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import { expect, it } from 'vitest';

const source = join(import.meta.dirname, '..');
const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter(
  (file) => !file.includes('.test.'),
);

/** Every text between quotes or backticks of a file of the catalogue. */
const textsOf = (file: string): string[] =>
  [...readFileSync(join(source, file), 'utf8').matchAll(/'((?:[^'\\\n]|\\.)*)'|"([^"\n]*)"|`([^`]*)`/g)]
    .map(([, single, double, template]) => single ?? double ?? template ?? '')
    .filter((text) => text.includes(' ') || /^[A-Z]/.test(text));

const catalogue = files.filter((file) => /^words[\\/][^\\/]+\.ts$/.test(file)).flatMap(textsOf);

it('has a catalogue to check', () => {
  expect(catalogue.length).toBeGreaterThan(200);
});

it('names no moment of the swing by a number and no drill by a code', () => {
  expect(catalogue.filter((text) => /\b[A-Z]\d{1,2}\b|\bposition \d/.test(text))).toEqual([]);
});

it('says nothing in initials', () => {
  expect(catalogue.filter((text) => /\b(?!MP4|MOV|MB|JPEG|PNG|HEIC)[A-Z]{2,}\d?\b/.test(text))).toEqual([]);
});

it('shows no id of the library and no word of the code', () => {
  const ids = [...causes, ...drills].map(({ id }) => id).filter((id) => id.includes('-'));
  const shown = catalogue.filter(
    (text) =>
      ids.some((id) => text.includes(id)) || /\b[a-z]+_[a-z]+\b|\b[a-z]+[A-Z][a-z]+\b(?![^{]*\})/.test(text),
  );
  expect(shown).toEqual([]);
});

it('keeps every sentence of a screen in the catalogue', () => {
  const loose = files
    .filter((file) => file.endsWith('.tsx'))
    .flatMap((file) => {
      const texts = readFileSync(join(source, file), 'utf8').matchAll(
        />\s*([A-Za-z][^<>{}=;()]*[a-z])\s*<\//g,
      );
      return [...texts].map(([, text]) => `${file}: ${text}`);
    });
  expect(loose).toEqual([]);
});
