import { ProblemError } from '@ballfirst/contracts/problems';
import { causes } from '@ballfirst/library/causes';
import type { Input } from '../operation-types.ts';

/** Set-up ticks that go with one movement. */
export const ticksAtMost = 3;

type Asked = Pick<Input<'saveReply'>, 'cause' | 'setUpTicks' | 'moreCauses' | 'moreAgreed'>;

/**
 * One movement and up to three ticks; more only where the coach was asked and said yes.
 * @returns the movements beyond the one, each once, and whether the reply asks for more than one movement and three ticks
 * @throws ProblemError too-much-at-once, bad-request for a cause the library does not know, or one without a first
 */
export const checkMore = (input: Asked): { readonly moreCauses: string[]; readonly isMore: boolean } => {
  const moreCauses = [...new Set(input.moreCauses ?? [])].filter((cause) => cause !== input.cause);
  for (const cause of moreCauses) {
    if (input.cause !== null && causes.some(({ id }) => id === cause)) continue;
    const message =
      input.cause === null ? 'Choose the first cause before another.' : 'This cause is not in the library.';
    throw new ProblemError('bad-request', message, [{ path: 'moreCauses', message }]);
  }
  const isMore = moreCauses.length > 0 || new Set(input.setUpTicks).size > ticksAtMost;
  if (isMore && input.moreAgreed !== true) throw new ProblemError('too-much-at-once');
  return { moreCauses, isMore };
};
