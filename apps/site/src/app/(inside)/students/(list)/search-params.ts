import { pagePath } from '../../../../paging/page-path.ts';
import type { standingNames } from '../../../../words/names.ts';

export type Standing = keyof typeof standingNames;
export type StudentsFilter = { readonly standing: Standing | null; readonly after: string | null };
export type StudentsSearch = { standing?: string; after?: string };

export const standingOrder: readonly Standing[] = ['trial', 'paid', 'lapsed', 'paused', 'invited', 'left'];

/** The filter the address asks for; anything unknown counts as not asked. */
export const filterOf = (search: StudentsSearch): StudentsFilter => ({
  standing: standingOrder.find((one) => one === search.standing) ?? null,
  after: search.after ?? null,
});

/** The filter as the API's query: what was not asked is left out. */
export const queryOf = ({ standing, after }: StudentsFilter) => ({
  ...(standing !== null && { standing }),
  ...(after !== null && { after }),
});

export const pathOf = (filter: StudentsFilter): string => pagePath('/students', { ...filter });
