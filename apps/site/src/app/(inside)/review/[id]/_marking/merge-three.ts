import { type Content, keyOf, type Mark, type Observation, type TrailPoint } from './marking.ts';

export type Item = Mark | Observation | TrailPoint;
/** One thing that was changed here and by somebody else; null: taken away. */
export type Conflict = { readonly key: string; readonly mine: Item | null; readonly theirs: Item | null };
export type Merged = {
  readonly content: Content;
  readonly conflicts: readonly Conflict[];
  /** Whether somebody else changed anything. */
  readonly others: boolean;
};

export const isMark = (item: Item): item is Mark => 'point' in item;
export const isObservation = (item: Item): item is Observation => 'answer' in item;
export const itemKey = (item: Item): string => {
  if (isMark(item)) return keyOf(item);
  return isObservation(item) ? item.key : `trail/${item.frame}`;
};

const itemsOf = ({ marks, observations, trail = [] }: Content): readonly Item[] => [
  ...marks,
  ...observations,
  ...trail,
];
const all = (content: Content): Map<string, Item> =>
  new Map(itemsOf(content).map((item) => [itemKey(item), item]));

const said = (item: Item | null): string => {
  if (item === null) return '';
  if (isObservation(item)) return item.answer;
  return `${item.frame} ${item.x} ${item.y} ${isMark(item) ? item.source : ''}`;
};
const contentOf = (items: readonly Item[]): Content => {
  const trail = items
    .flatMap((item) => (isMark(item) || isObservation(item) ? [] : [item]))
    .sort((a, b) => a.frame - b.frame);
  return {
    marks: items.filter(isMark),
    observations: items.filter(isObservation),
    ...(trail.length > 0 && { trail }),
  };
};

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
  const rest = itemsOf(content).filter((one) => itemKey(one) !== key);
  return contentOf(item === null ? rest : [...rest, item]);
};
