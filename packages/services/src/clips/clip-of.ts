import { ClipStatus, SwingLength, View } from '@ballfirst/contracts/words';
import type { Reply } from '../operation-types.ts';
import type { ClipRow } from '../rows.ts';
import { mediaPath } from './keys.ts';
import { refusalWords } from './refusal-words.ts';

const pictureOf = (row: ClipRow): Reply<'readClip'>['picture'] => {
  const { widthPx, heightPx, frames, fps, durationMs } = row;
  if (widthPx === null || heightPx === null || frames === null || fps === null || durationMs === null) {
    return null;
  }
  return { widthPx, heightPx, frames, fps, durationMs };
};

const refusalOf = (row: ClipRow): Reply<'readClip'>['refusal'] => {
  const code = row.status === 'expired' ? 'expired' : row.refusal;
  return code === null ? null : { code, words: refusalWords(code) };
};

/** A clip as the contract says it. */
export const clipOf = (row: ClipRow): Reply<'readClip'> => ({
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
        }
      : null,
  createdAt: row.createdAt.toISOString(),
});
