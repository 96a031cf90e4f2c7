import type { Reply } from '@ballfirst/contracts/client';
import type { View } from '@ballfirst/swing/marks/marks';
import { compareWords } from '../../../../../words/compare.ts';
import { clubNames } from '../../../../../words/names.ts';

export type Comparable = Reply<'listComparable'>['items'][number];
export type ChoiceGroup = { readonly name: string; readonly of: readonly Comparable[] };

/**
 * What a clip can be compared with, in groups: the last swing and the best one, then the others by club, then the
 * collection. Only of the same view: two views show nothing at the same place.
 */
export const choicesOf = (items: readonly Comparable[], view: View): readonly ChoiceGroup[] => {
  const same = items.filter(({ clip }) => clip.view === view && clip.media !== null && clip.picture !== null);
  const own = same.filter(({ from }) => from === 'student');
  const first = own.filter(({ last, best }) => last || best);
  const rest = own.filter((one) => !first.includes(one));
  const clubs = [...new Set(rest.map(({ club }) => club))];
  const groups: ChoiceGroup[] = [
    { name: compareWords.lastAndBest, of: first },
    ...clubs.map((club) => ({ name: clubNames[club], of: rest.filter((one) => one.club === club) })),
    { name: compareWords.collection, of: same.filter(({ from }) => from === 'collection') },
  ];
  return groups.filter(({ of }) => of.length > 0);
};

/** The one that is shown first: the last swing with this club, else the last swing at all, else what comes first. */
export const firstChoice = (groups: readonly ChoiceGroup[], club: Comparable['club']): Comparable | null => {
  const all = groups.flatMap(({ of }) => of);
  const own = all
    .filter(({ from }) => from === 'student')
    .toSorted((a, b) => b.sentAt.localeCompare(a.sentAt));
  return own.find((one) => one.club === club) ?? own[0] ?? all[0] ?? null;
};
