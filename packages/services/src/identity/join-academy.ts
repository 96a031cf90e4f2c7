import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';

export const joinAcademy = async (
  call: IdentityCall<'joinAcademy'>,
): Promise<SignedIn<Reply<'joinAcademy'>>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
