import { expect, it } from 'vitest';
import { bytesInWords, hoursInWords, leftInWords, lengthInWords } from './times.ts';

const hour = 3_600_000;

it('says a length as a person would', () => {
  expect(lengthInWords(25 * 60_000)).toBe('25 min');
  expect(lengthInWords(3 * hour + 600_000)).toBe('3 h 10 min');
  expect(lengthInWords(3 * hour)).toBe('3 h');
  expect(lengthInWords(30 * hour)).toBe('30 h');
  expect(lengthInWords(72 * hour)).toBe('3 days');
});

it('says what is left and what is late', () => {
  expect(leftInWords(2 * hour)).toBe('2 h left');
  expect(leftInWords(-2 * hour)).toBe('2 h late');
});

it('says hours and bytes', () => {
  expect(hoursInWords(null)).toBe('–');
  expect(hoursInWords(3.25)).toBe('3.3 h');
  expect(hoursInWords(25.4)).toBe('25 h');
  expect(bytesInWords(900)).toBe('1 kB');
  expect(bytesInWords(2_500_000)).toBe('2.5 MB');
  expect(bytesInWords(25_400_000)).toBe('25 MB');
});
