import type { Who } from '@ballfirst/contracts/operation';

/** Whether a role may use what is for `who`. Managers may do what coaches may. */
export const mayUse = (who: readonly Who[], role: 'coach' | 'manager' | 'student'): boolean =>
  who.includes('anyone') ||
  who.includes('signed-in') ||
  who.includes(role) ||
  (role === 'manager' && who.includes('coach'));
