import type { FastifySerializerCompiler } from 'fastify';
import { ResponseSerializationError } from 'fastify-type-provider-zod';
import { type $ZodType, safeParse } from 'zod/v4/core';

/**
 * Writes an answer as its contract says: what the contract does not name is left out, and an answer that is not as it says is
 * never sent. Parsed, not encoded: no answer of ours changes its form on the way, and encoding checks all of it twice
 * (a page of the inbox: 0.4 ms instead of 1.0).
 *
 * @throws ResponseSerializationError
 */
export const checkedReply: FastifySerializerCompiler<$ZodType> = ({ schema, method, url }) => {
  return (answer) => {
    const checked = safeParse(schema, answer);
    if (checked.error) throw new ResponseSerializationError(method, url, { cause: checked.error });
    return JSON.stringify(checked.data);
  };
};
