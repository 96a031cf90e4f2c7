import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';

export const signOut = async (call: SignedInCall<'signOut'>): Promise<Reply<'signOut'>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
