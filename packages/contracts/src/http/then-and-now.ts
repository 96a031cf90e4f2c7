import { z } from 'zod';
import { operation } from '../operation.ts';
import { Position } from '../words.ts';
import { Side } from './asking.ts';
import { idParam } from './submissions.ts';

export const readThenAndNow = operation({
  id: 'readThenAndNow',
  method: 'GET',
  path: '/api/submissions/{id}/then-and-now',
  tag: 'practice',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'The first swing of the student and this one at the same moment, where both are marked there.',
  params: idParam,
  reply: z.object({ pair: z.object({ moment: Position, first: Side, latest: Side }).nullable() }),
});
