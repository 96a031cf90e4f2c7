import { drills } from '@ballfirst/library/drills';

/** What a drill is called; one that is no longer in the library keeps its id. */
export const drillName = (id: string): string => drills.find((drill) => drill.id === id)?.name ?? id;
