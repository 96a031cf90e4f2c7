import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';

export const signIn = async (call: IdentityCall<'signIn'>): Promise<SignedIn<Reply<'signIn'>>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
