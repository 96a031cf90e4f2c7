import type { Reply } from '@ballfirst/contracts/client';

export type Programme = NonNullable<Reply<'readHome'>['programme']>;
export type Rung = Programme['drill']['ladder'][number];
/** Who stands where on which ladder: a programme, or the second drill of one. */
export type OnLadder = Pick<Programme, 'rung' | 'status'> & {
  readonly drill: { readonly ladder: readonly Rung[] };
};
export type RungState = 'passed' | 'here' | 'later';

/** Each step of the ladder with how it stands: those under the student's own are passed, unless the ladder is done. */
export const rungStates = (
  programme: OnLadder,
): readonly { readonly rung: Rung; readonly state: RungState }[] => {
  const { ladder } = programme.drill;
  const at = ladder.findIndex(({ id }) => id === programme.rung);
  return ladder.map((rung, index) => {
    if (programme.status === 'done' || index < at) return { rung, state: 'passed' };
    return { rung, state: index === at ? 'here' : 'later' };
  });
};
