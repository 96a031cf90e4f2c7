import type { Database } from '@ballfirst/db/database';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Blobs, Clock, Log, Mailer } from './ports.ts';

/** Who acts. A person acts in one academy by one membership; the system acts by a job. */
export type Actor =
  | {
      readonly kind: 'person';
      readonly personId: string;
      readonly membershipId: string;
      readonly role: 'coach' | 'manager' | 'student';
      readonly studentId: string | null;
      readonly name: string;
    }
  | { readonly kind: 'system'; readonly job: string };

export type Resources = {
  readonly db: Database;
  readonly clock: Clock;
  readonly blobs: Blobs;
  readonly mailer: Mailer;
  readonly log: Log;
  /** Where people reach us, without a slash at the end. */
  readonly publicUrl: string;
};

/** What every verb is given: `verb({ ctx, input })`. With `tx` it joins an open transaction of the same academy. */
export type Context = {
  readonly academyId: string;
  readonly actor: Actor;
  readonly resources: Resources;
  readonly requestId: string;
  readonly tx?: Tx;
  /** Gives a submission its id where nothing is left to chance (the demo); absent: a new one. */
  readonly mintId?: () => string;
  /** Set for a request with an Idempotency-Key: the verb's transaction records its answer (see `once.ts`). */
  readonly once?: { readonly owner: string; readonly key: string; readonly requestHash: string };
};
