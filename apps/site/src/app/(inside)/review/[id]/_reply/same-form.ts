import type { Draft, ReplyForm } from './reply-form.ts';

/** Of a draft, or of what an older version of this page kept, what a coach writes. */
export const formOf = (of: ReplyForm | Draft): ReplyForm => {
  const { words, cause, setUpTicks, frames, plan, moreCauses = [] } = of;
  const moreAgreed = 'moreAgreed' in of ? of.moreAgreed : (of.moreAgreedAt ?? null) !== null;
  const { teachingClip = null, withTalk = true } = of;
  const film = typeof teachingClip === 'string' ? teachingClip : (teachingClip?.cause ?? null);
  return {
    ...{ words, cause, setUpTicks, frames, plan, moreCauses, moreAgreed },
    ...{ teachingClip: film, withTalk },
  };
};

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

/** A yes to more counts only where there is more to say yes to. */
const said = (of: ReplyForm | Draft): unknown => {
  const { moreAgreed, ...form } = formOf(of);
  return { ...form, moreAgreed: moreAgreed && (form.moreCauses.length > 0 || form.setUpTicks.length > 3) };
};

/** Whether two texts say the same, so that there is nothing to choose between. */
export const sameForm = (a: ReplyForm | Draft, b: ReplyForm | Draft): boolean =>
  JSON.stringify(inOrder(said(a))) === JSON.stringify(inOrder(said(b)));
