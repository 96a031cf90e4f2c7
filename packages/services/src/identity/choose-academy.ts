import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';

export const chooseAcademy = async (call: SignedInCall<'chooseAcademy'>): Promise<Reply<'chooseAcademy'>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
