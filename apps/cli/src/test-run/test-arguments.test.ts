import { expect, it } from 'vitest';
import { readTestArguments } from './test-arguments.ts';

it('tests everything unless told otherwise', () => {
  expect(readTestArguments([])).toEqual({
    projects: ['unit', 'integration', 'schema', 'journeys'],
    postgresBin: undefined,
    filters: [],
  });
});

it('takes projects, a PostgreSQL and paths', () => {
  expect(readTestArguments(['--only', 'unit,schema', 'packages/db', '--postgres-bin', '/usr/bin'])).toEqual({
    projects: ['unit', 'schema'],
    postgresBin: '/usr/bin',
    filters: ['packages/db'],
  });
});

it.each([[['--only', 'units']], [['--only']], [['--watch']]])('refuses %j', (args) => {
  expect(() => readTestArguments(args)).toThrow();
});
