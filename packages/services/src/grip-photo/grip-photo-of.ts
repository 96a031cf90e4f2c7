import { ClipStatus } from '@ballfirst/contracts/words';
import { mediaPath } from '../clips/keys.ts';
import { refusalWords } from '../clips/refusal-words.ts';
import type { Reply } from '../operation-types.ts';
import type { ClipRow } from '../rows.ts';

/** What the view of a clip's row says where it is no clip of a swing but a photo of the hands. */
export const gripView = 'grip-photo';

const refusalOf = ({ status, refusal }: ClipRow): Reply<'readGripPhoto'>['refusal'] => {
  const code = status === 'expired' || status === 'erased' ? `photo_${status}` : refusal;
  return code === null ? null : { code, words: refusalWords(code) };
};

/** A photo of the grip as the contract says it. */
export const gripPhotoOf = (row: ClipRow): Reply<'readGripPhoto'> => ({
  id: row.id,
  submissionId: row.photoOf,
  status: ClipStatus.parse(row.status),
  refusal: refusalOf(row),
  picture:
    row.widthPx === null || row.heightPx === null ? null : { widthPx: row.widthPx, heightPx: row.heightPx },
  photo: row.status === 'ready' ? mediaPath(row.id, 'photo.jpg') : null,
  createdAt: row.createdAt.toISOString(),
});
