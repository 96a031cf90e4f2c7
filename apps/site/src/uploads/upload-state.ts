import type { Reply } from '@ballfirst/contracts/client';

type Clip = Reply<'readClip'>;

/** What travels with the bytes. */
export type ClipFacts = { readonly view: Clip['view']; readonly swingLength: Clip['swingLength'] };
/** A photo of the grip goes the same way. */
export type PhotoFacts = { readonly view: 'grip-photo'; readonly swingLength: 'none' };
export type UploadFacts = ClipFacts | PhotoFacts;

/** Where an upload is. `clipId` is known from the first answer of the door on. */
export type UploadState =
  | { readonly kind: 'none' }
  | { readonly kind: 'asks-same'; readonly fileName: string; readonly clipId: string | null }
  | {
      readonly kind: 'running' | 'waiting';
      readonly fileName: string;
      readonly clipId: string | null;
      readonly sentBytes: number;
      readonly totalBytes: number;
      readonly leftMs: number | null;
    }
  | {
      readonly kind: 'stopped';
      readonly fileName: string;
      readonly clipId: string | null;
      readonly words: string;
      readonly signedOut: boolean;
    }
  | { readonly kind: 'done'; readonly fileName: string; readonly clipId: string };

/** Time left at the mean rate since the start of this run; null while there is too little to tell. */
export const leftMs = (
  sentNow: number,
  sentAtStart: number,
  total: number,
  elapsedMs: number,
): number | null => {
  const sent = sentNow - sentAtStart;
  if (elapsedMs < 1500 || sent <= 0) return null;
  return ((total - sentNow) * elapsedMs) / sent;
};

/** The id of the clip at the end of its upload's address. */
export const clipIdOf = (url: string | null): string | null =>
  url?.split(/[/?#]/).filter(Boolean).at(-1) ?? null;
