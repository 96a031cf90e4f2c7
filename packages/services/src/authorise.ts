import { ProblemError } from '@ballfirst/contracts/problems';
import type { Actor, Context } from './context.ts';

type Person = Extract<Actor, { kind: 'person' }>;
export type Student = Person & { readonly studentId: string };

const person = (ctx: Context): Person => {
  if (ctx.actor.kind !== 'person') throw new ProblemError('not-allowed');
  return ctx.actor;
};

/** A coach or a manager: managers may do what coaches may. @throws ProblemError not-allowed */
export const requireStaff = (ctx: Context): Person => {
  const actor = person(ctx);
  if (actor.role === 'student') throw new ProblemError('not-allowed');
  return actor;
};

/** @throws ProblemError not-allowed */
export const requireManager = (ctx: Context): Person => {
  const actor = person(ctx);
  if (actor.role !== 'manager') throw new ProblemError('not-allowed');
  return actor;
};

/** @throws ProblemError not-allowed */
export const requireStudent = (ctx: Context): Student => {
  const actor = person(ctx);
  if (actor.role !== 'student' || actor.studentId === null) throw new ProblemError('not-allowed');
  return { ...actor, studentId: actor.studentId };
};

/** The worker's own verbs are not for people. @throws ProblemError not-allowed */
export const requireSystem = (ctx: Context): { readonly job: string } => {
  if (ctx.actor.kind !== 'system') throw new ProblemError('not-allowed');
  return ctx.actor;
};

/** A person of this academy, whatever the role. @throws ProblemError not-allowed */
export const requirePerson = (ctx: Context): Person => person(ctx);

/**
 * Whether the actor may read what belongs to a student: the student, and the staff of the academy. Somebody else's
 * looks exactly like something that is not there.
 * @throws ProblemError not-found
 */
export const requireReader = (ctx: Context, studentId: string): void => {
  if (ctx.actor.kind === 'system') return;
  if (ctx.actor.role === 'student' && ctx.actor.studentId !== studentId) throw new ProblemError('not-found');
};
