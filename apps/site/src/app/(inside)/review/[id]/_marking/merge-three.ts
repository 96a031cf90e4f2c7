import { type Content, keyOf, type Mark, type Observation } from './marking.ts';

type Item = Mark | Observation;
/** One thing that was changed here and by somebody else; null: taken away. */
export type Conflict = { readonly key: string; readonly mine: Item | null; readonly theirs: Item | null };
export type Merged = {
  readonly content: Content;
  readonly conflicts: readonly Conflict[];
  /** Whether somebody else changed anything. */
  readonly others: boolean;
};

export const isMark = (item: Item): item is Mark => 'point' in item;
export const itemKey = (item: Item): string => (isMark(item) ? keyOf(item) : item.key);

const all = ({ marks, observations }: Content): Map<string, Item> =>
  new Map([...marks, ...observations].map((item) => [itemKey(item), item]));

const said = (item: Item | null): string => {
  if (item === null) return '';
  return isMark(item) ? `${item.frame} ${item.x} ${item.y} ${item.source}` : item.answer;
};
const contentOf = (items: readonly Item[]): Content => ({
  marks: items.filter(isMark),
  observations: items.filter((item) => !isMark(item)) as Observation[],
});

export const sameContent = (a: Content, b: Content): boolean => {
  const [left, right] = [all(a), all(b)];
  return (
    left.size === right.size && [...left].every(([key, item]) => said(item) === said(right.get(key) ?? null))
  );
};

/**
 * Joins what was changed here with what somebody else stored meanwhile, each against what both began from. A thing that
 * both changed differently keeps its own value here and is named as a conflict: nobody is overwritten unasked.
 */
export const mergeThree = (base: Content, own: Content, stored: Content): Merged => {
  const [before, mine, theirs] = [all(base), all(own), all(stored)];
  const items: Item[] = [];
  const conflicts: Conflict[] = [];
  let others = false;
  for (const key of new Set([...mine.keys(), ...theirs.keys(), ...before.keys()])) {
    const [b, m, t] = [before, mine, theirs].map((map) => map.get(key) ?? null);
    const changedHere = said(m ?? null) !== said(b ?? null);
    const changedThere = said(t ?? null) !== said(b ?? null);
    others ||= changedThere && said(m ?? null) !== said(t ?? null);
    if (changedHere && changedThere && said(m ?? null) !== said(t ?? null))
      conflicts.push({ key, mine: m ?? null, theirs: t ?? null });
    const kept = changedHere ? m : t;
    if (kept) items.push(kept);
  }
  return { content: contentOf(items), conflicts, others };
};

/** The content with one thing as it is chosen, or without it. */
export const withItem = (content: Content, key: string, item: Item | null): Content => {
  const rest = [...content.marks, ...content.observations].filter((one) => itemKey(one) !== key);
  return contentOf(item === null ? rest : [...rest, item]);
};
