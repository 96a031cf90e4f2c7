import { causes } from '@ballfirst/library/causes';
import { faultList } from '@ballfirst/library/faults';

/** What a fault or a cause is called; one that the library does not have keeps its id. */
export const nameOfKey = (kind: 'fault' | 'cause', key: string): string => {
  const list: readonly { readonly id: string; readonly name: string }[] =
    kind === 'fault' ? faultList : causes;
  return list.find(({ id }) => id === key)?.name ?? key;
};
