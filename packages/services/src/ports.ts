/** What the house needs from the world outside. `packages/edges` and `packages/media` implement these; only apps join them. */

/** The time. Tests move it; nobody sleeps. */
export type Clock = { now(): Date };

/** Files by key (`<academyId>/clips/<clipId>/poster.jpg`). Keys never come from a request as they are. */
export type Blobs = {
  /** Writes durably (file and folder synced) and replaces atomically. */
  put(key: string, bytes: Uint8Array): Promise<void>;
  /** Size in bytes, or null when there is none. */
  size(key: string): Promise<number | null>;
  /** A stream of bytes `start..end` inclusive. */
  read(key: string, range?: { start: number; end: number }): Promise<NodeJS.ReadableStream>;
  remove(key: string): Promise<void>;
  /** Where a file of this key is worked on, on this machine. On disk that is the store itself. */
  localPath(key: string): string;
  /** Makes what lies at the local path durable in the store; where the store is elsewhere, a copy stays here. */
  settle(key: string): Promise<void>;
  /** Brings a file to its local path, for tools that need one. */
  fetch(key: string): Promise<string>;
  /** Lets the local copy go where the store is elsewhere. */
  release(key: string): Promise<void>;
};

export type Letter = {
  readonly to: { readonly name: string; readonly address: string };
  readonly from: { readonly name: string; readonly address: string };
  readonly subject: string;
  readonly text: string;
  readonly html: string;
  /** Stable per effect, so that a message sent twice is one message. */
  readonly messageId: string;
  readonly date: Date;
  /** One POST there ends such letters (RFC 8058), for mail programs that offer it. */
  readonly stopUrl?: string;
};
export type Mailer = { send(letter: Letter): Promise<void> };

export type Log = {
  info(fields: Record<string, unknown>, message: string): void;
  warn(fields: Record<string, unknown>, message: string): void;
  error(fields: Record<string, unknown>, message: string): void;
};
