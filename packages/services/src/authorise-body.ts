import type { Context } from './context.ts';

/** Health data is for those who coach; a manager sees that something was told, not what. */
export const readsBody = ({ actor }: Context): boolean => actor.kind === 'person' && actor.role === 'coach';
