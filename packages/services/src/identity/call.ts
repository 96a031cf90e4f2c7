import type { OperationId } from '@ballfirst/contracts/http/operations';
import type { SessionActor } from '@ballfirst/db/crossings/session-actor';
import type { Context, Resources } from '../context.ts';
import type { Input } from '../operation-types.ts';

/** A session as the door holds it: the token of the cookie and whom it speaks for. */
export type Session = { readonly token: string; readonly actor: SessionActor };

/** What identity verbs are given: they act before, or beside, any one academy. */
export type IdentityCall<K extends OperationId> = {
  readonly resources: Resources;
  readonly input: Input<K>;
  /** Network address of the caller, for rate limits. */
  readonly address: string;
  /** User agent in short, so that a person knows a session again. */
  readonly device: string;
  readonly requestId: string;
  readonly once?: Context['once'];
};
export type SignedInCall<K extends OperationId> = IdentityCall<K> & { readonly session: Session };

/** A session just opened: only the door ever sees the token; the database keeps its hash. */
export type Opened = { readonly token: string; readonly expiresAt: Date };
export type SignedIn<R> = { readonly reply: R; readonly opened: Opened };
