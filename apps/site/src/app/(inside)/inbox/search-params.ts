import { kindOrder } from '../../../words/inbox.ts';
import { type Outcome, outcomeOrder } from '../../../words/tally.ts';

export type InboxFilter = {
  readonly fault: Outcome | null;
  readonly claimed: 'nobody' | 'me' | null;
  readonly kind: (typeof kindOrder)[number] | null;
  readonly search: string | null;
  readonly after: string | null;
};
export type InboxSearch = Partial<Record<keyof InboxFilter, string>>;

/** The filter the address asks for; anything unknown counts as not asked. */
export const filterOf = (search: InboxSearch): InboxFilter => {
  const name = search.search?.trim().slice(0, 80) ?? '';
  return {
    fault: outcomeOrder.find((one) => one === search.fault) ?? null,
    claimed: search.claimed === 'nobody' || search.claimed === 'me' ? search.claimed : null,
    kind: kindOrder.find((one) => one === search.kind) ?? null,
    search: name === '' ? null : name,
    after: search.after ?? null,
  };
};

/** The filter as the API's query: what was not asked is left out. */
export const queryOf = (filter: InboxFilter) => ({
  ...(filter.fault !== null && { fault: filter.fault }),
  ...(filter.claimed !== null && { claimed: filter.claimed }),
  ...(filter.kind !== null && { kind: filter.kind }),
  ...(filter.search !== null && { search: filter.search }),
  ...(filter.after !== null && { after: filter.after }),
});

export const pathOf = (filter: InboxFilter): string => {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(filter)) if (value !== null) query.set(name, value);
  return query.size === 0 ? '/inbox' : `/inbox?${query}`;
};
