import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';

export const readMe = async (call: SignedInCall<'readMe'>): Promise<Reply<'readMe'>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
