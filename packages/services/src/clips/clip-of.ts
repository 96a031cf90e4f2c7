import { Suggestion } from '@ballfirst/contracts/http/submissions';
import { ClipStatus, SwingLength, View } from '@ballfirst/contracts/words';
import type { Reply } from '../operation-types.ts';
import { mediaPath } from './keys.ts';
import { refusalWords } from './refusal-words.ts';

/** What of a clip's row its contract shape is made from; instants may be texts already. */
export type ClipParts = {
  readonly id: string;
  readonly submissionId: string | null;
  readonly fileName: string;
  readonly view: string;
  readonly swingLength: string;
  readonly status: string;
  readonly lengthBytes: bigint | number;
  readonly percent: number;
  readonly refusal: string | null;
  readonly widthPx: number | null;
  readonly heightPx: number | null;
  readonly frames: number | null;
  readonly fps: number | null;
  readonly durationMs: number | null;
  readonly suggestion: unknown;
  readonly createdAt: Date | string;
};

const pictureOf = (row: ClipParts): Reply<'readClip'>['picture'] => {
  const { widthPx, heightPx, frames, fps, durationMs } = row;
  if (widthPx === null || heightPx === null || frames === null || fps === null || durationMs === null) {
    return null;
  }
  return { widthPx, heightPx, frames, fps, durationMs };
};

const suggestionOf = (row: ClipParts): Suggestion | null =>
  row.status === 'ready' ? Suggestion.nullable().parse(row.suggestion ?? null) : null;

const refusalOf = (row: ClipParts): Reply<'readClip'>['refusal'] => {
  const code = row.status === 'expired' || row.status === 'erased' ? row.status : row.refusal;
  return code === null ? null : { code, words: refusalWords(code) };
};

/** A clip as the contract says it. */
export const clipOf = (row: ClipParts): Reply<'readClip'> => ({
  id: row.id,
  submissionId: row.submissionId,
  fileName: row.fileName,
  view: View.parse(row.view),
  swingLength: SwingLength.parse(row.swingLength),
  status: ClipStatus.parse(row.status),
  lengthBytes: Number(row.lengthBytes),
  percent: row.percent,
  refusal: refusalOf(row),
  picture: pictureOf(row),
  media:
    row.status === 'ready'
      ? {
          rendition: mediaPath(row.id, 'rendition.mp4'),
          poster: mediaPath(row.id, 'poster.jpg'),
          frameTimes: mediaPath(row.id, 'frames.json'),
          strip: (suggestionOf(row)?.strip.length ?? 0) > 0 ? mediaPath(row.id, 'strip.jpg') : null,
        }
      : null,
  suggestion: suggestionOf(row),
  createdAt: new Date(row.createdAt).toISOString(),
});
