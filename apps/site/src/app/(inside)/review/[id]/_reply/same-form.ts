import type { ReplyForm } from './reply-form.ts';

/** Of a draft what a coach writes. */
export const formOf = ({ words, cause, setUpTicks, frames, plan }: ReplyForm): ReplyForm => ({
  ...{ words, cause, setUpTicks, frames, plan },
});

/** The same members in one order, whoever wrote them. */
const inOrder = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, member]) => [key, inOrder(member)]),
  );
};

/** Whether two texts say the same, so that there is nothing to choose between. */
export const sameForm = (a: ReplyForm, b: ReplyForm): boolean =>
  JSON.stringify(inOrder(formOf(a))) === JSON.stringify(inOrder(formOf(b)));
