import { operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { checkedReply } from './checked-reply.ts';

const schema = z.object({
  name: z.string(),
  at: z.iso.datetime(),
  mark: z.object({ x: z.number() }).nullable(),
});
const write = checkedReply({ schema, method: 'GET', url: '/api/marks' });
const right = { name: 'Ásta', at: '2026-03-10T08:00:00.000Z', mark: { x: 1.5 } };

describe('an answer', () => {
  it('is written without what its contract does not name', () => {
    const told = write({ ...right, secret: 'hash', mark: { ...right.mark, owner: 'somebody' } });
    expect(JSON.parse(told)).toEqual(right);
  });

  it.each([
    ['a value of another kind', { ...right, name: 7 }],
    ['a format that is not kept', { ...right, at: 'this morning' }],
    ['something missing', { name: right.name, at: right.at }],
    ['nothing', undefined],
  ])('is never sent with %s', (_what, answer) => {
    expect(() => write(answer)).toThrow(expect.objectContaining({ method: 'GET', url: '/api/marks' }));
  });

  it('changes its form in no operation, so that parsing it is writing it', () => {
    // A transform, a codec or a default would make what is sent another thing than what the verb answered.
    const changing = /"type":"(transform|pipe|default|prefault|catch)"/;
    expect(typesIn(z.object({ of: z.array(z.string().transform(Number)) }))).toMatch(changing);
    for (const { id, status, reply } of Object.values<Operation>(operations)) {
      if (status !== 204) expect(`${id} ${typesIn(reply)}`).not.toMatch(changing);
    }
  });
});

/** The kinds of schema inside one, as text. */
function typesIn(of: unknown, seen = new Set<unknown>()): string {
  if (typeof of !== 'object' || of === null || seen.has(of)) return '';
  seen.add(of);
  const own = of instanceof z.core.$ZodType ? `"type":"${of._zod.def.type}" ` : '';
  const inner = of instanceof z.core.$ZodType ? of._zod.def : of;
  return (
    own +
    Object.values(inner)
      .map((one) => typesIn(one, seen))
      .join('')
  );
}
