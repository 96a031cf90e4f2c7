import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant, LocalDate } from '../words.ts';
import { idParam } from './submissions.ts';

export const Units = z.enum(['metric', 'imperial']);
/** Brushes over a line without a ball: mm from the line, + past it towards the target. */
export const LineTest = z.object({
  id: Id,
  at: Instant,
  localDate: LocalDate,
  by: z.string(),
  startsMm: z.array(z.number().int()),
  behind: z.number().int(),
  meanStartMm: z.number(),
  sdMm: z.number(),
  /** 95 % interval of the mean. */
  lowMm: z.number(),
  highMm: z.number(),
});
const LineTests = z.object({ units: Units, items: z.array(LineTest) });

export const listLineTests = operation({
  id: 'listLineTests',
  method: 'GET',
  path: '/api/students/{id}/line-tests',
  tag: 'practice',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'The line tests of a student, newest first, twenty at most.',
  params: idParam,
  reply: LineTests,
});
export const noteLineTest = operation({
  id: 'noteLineTest',
  method: 'POST',
  path: '/api/students/{id}/line-tests',
  tag: 'practice',
  who: ['student', 'coach', 'manager'],
  status: 201,
  summary: 'Note where up to ten brushes over a line began; answers with their mean and its doubt.',
  params: idParam,
  body: z.object({
    startsMm: z
      .array(z.number().int().min(-1000).max(1000, 'A brush begins within a metre of the line.'))
      .min(3, 'Three brushes at least.')
      .max(10, 'Ten brushes at most.'),
  }),
  reply: LineTests,
  creates: true,
});
