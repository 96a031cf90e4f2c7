import { z } from 'zod';
import { type Problem as Body, problemCodes } from './problems.ts';

/** The schema of every error answer, for the document. Apart from the codes, so that a browser need not load a validator. */
export const Problem: z.ZodType<Body> = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int(),
  code: z.enum(problemCodes),
  detail: z.string(),
  requestId: z.string(),
  /** Which fields are wrong, in words. */
  fields: z.array(z.object({ path: z.string(), message: z.string() })).optional(),
});
