import type { FaultId } from './types.ts';

/** What a fault is called: by a coach, on a student's screen, and what happened in one sentence. */
export type Fault = {
  readonly id: FaultId;
  readonly name: string;
  readonly studentName: string;
  readonly happened: string;
  /** The outcome a working drill brings instead, for a while. */
  readonly oppositeMiss: FaultId | null;
};

const fault = (
  id: FaultId,
  name: string,
  studentName: string,
  happened: string,
  oppositeMiss: FaultId | null,
): Fault => ({ id, name, studentName, happened, oppositeMiss });

export const faultList: readonly Fault[] = [
  fault('fat', 'Fat', 'Ground first', 'The club met the ground before the ball.', 'thin'),
  fault('thin', 'Thin', 'Thin', 'The lower edge of the club met the ball near its middle.', 'fat'),
  fault('topped', 'Topped', 'Topped', 'The club met the upper half of the ball.', 'fat'),
  fault('slice', 'Slice', 'Curves to the {trail}', 'The ball curved strongly to the {trail}.', 'hook'),
  fault('hook', 'Hook', 'Curves to the {lead}', 'The ball curved strongly to the {lead}.', 'slice'),
  fault('push', 'Push', 'Starts to the {trail}', 'The ball started to the {trail} and stayed there.', 'pull'),
  fault('pull', 'Pull', 'Starts to the {lead}', 'The ball started to the {lead} and stayed there.', 'push'),
  fault('shank', 'Shank', 'Off the neck', 'The ball came off the neck of the club.', 'toe'),
  fault('heel', 'Heel', 'Off the heel', 'The ball came off the part of the face nearest to you.', 'toe'),
  fault('toe', 'Toe', 'Off the toe', 'The ball came off the part of the face farthest from you.', 'heel'),
  fault('sky', 'Sky', 'Straight up', 'The ball came off the top edge and went up, not forward.', 'thin'),
];

const byId = new Map(faultList.map((one) => [one.id, one]));

/** @throws RangeError on an unknown fault */
export const faultById = (id: FaultId): Fault => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`No fault is called "${id}".`);
  return found;
};
