import { hash, verify } from '@node-rs/argon2';

/** argon2id with 19 MiB, two passes, one lane (OWASP Password Storage Cheat Sheet); 2 stands for argon2id. */
const cost = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

export const hashPassword = (password: string): Promise<string> => hash(password, cost);

/** Made once a process from nobody's password, so that an unknown address costs the same work as a known one. */
let nobody: Promise<string> | null = null;
const hashOfNobody = (): Promise<string> => {
  nobody ??= hashPassword('the password of nobody at all');
  return nobody;
};

/** Whether the password belongs to the hash; with no hash the same work is done and the answer is no. */
export const passwordFits = async (password: string, of: string | null): Promise<boolean> => {
  const fits = await verify(of ?? (await hashOfNobody()), password);
  return fits && of !== null;
};
