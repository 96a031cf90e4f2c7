import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readDemoFile, writeDemoFile } from './demo-file.ts';
import { signInLines } from './sign-in-lines.ts';

const person = (role: 'manager' | 'coach' | 'student', name: string) => ({
  role,
  name,
  email: `${name}@mere.example`,
  password: 'word',
});
const demo = {
  url: 'http://127.0.0.1:4600',
  academies: [
    {
      id: '018f0000-0000-7000-8000-000000000001',
      slug: 'mere',
      name: 'Mere',
      people: [
        person('coach', 'ada'),
        person('coach', 'ben'),
        person('manager', 'cy'),
        person('student', 'di'),
      ],
    },
  ],
};

it('keeps the promised shape, for this user only', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-demo-'));
  expect(readDemoFile(folder)).toBeUndefined();
  writeDemoFile(folder, demo);
  expect(readDemoFile(folder)).toEqual(demo);
  const json = JSON.parse(readFileSync(join(folder, 'demo.json'), 'utf8'));
  expect(Object.keys(json)).toEqual(['url', 'academies']);
  expect(Object.keys(json.academies[0])).toEqual(['id', 'slug', 'name', 'people']);
  expect(Object.keys(json.academies[0].people[0])).toEqual(['role', 'name', 'email', 'password']);
  expect(statSync(join(folder, 'demo.json')).mode & 0o777).toBe(0o600);
  rmSync(folder, { recursive: true });
});

it('prints the first person of each role', () => {
  expect(signInLines(demo)).toEqual([
    'Mere (invented):',
    '  manager  cy@mere.example  word',
    '  coach    ada@mere.example  word',
    '  student  di@mere.example  word',
  ]);
});
