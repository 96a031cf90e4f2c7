import type { Reply } from '../operation-types.ts';
import type { IdentityCall } from './call.ts';

export const readAcademy = async (call: IdentityCall<'readAcademy'>): Promise<Reply<'readAcademy'>> => {
  throw new Error(`not yet: ${call.requestId}`);
};
