import type { Reply } from '@ballfirst/contracts/client';
import { pointNames } from '../../../../../words/marks.ts';
import type { Marking } from '../_marking/marking.ts';
import type { ReplyForm } from './reply-form.ts';

type Frame = Reply<'readReply'>['frames'][number];

/** The pictures of a draft as the student will see them, drawn from the clip at hand; marks of the clip on the desk. */
export const previewFrames = (
  form: Pick<ReplyForm, 'frames'>,
  clips: Reply<'readSubmission'>['clips'],
  marking: Pick<Marking, 'clipId' | 'marks'> | null,
): Frame[] =>
  form.frames.flatMap(({ clipId, frame, position, caption }) => {
    const clip = clips.find(({ id }) => id === clipId);
    const { media, picture } = clip ?? {};
    if (!media || !picture) return [];
    const marks = marking?.clipId === clipId ? marking.marks : [];
    return [
      {
        ...{ clipId, frame, caption, rendition: media.rendition, poster: media.poster },
        ...{ still: null, described: caption, timeS: frame / picture.fps },
        ...{ widthPx: picture.widthPx, heightPx: picture.heightPx },
        marks: marks
          .filter((mark) => mark.position === position)
          .map(({ point, x, y }) => ({ point, name: pointNames[point], x, y })),
      },
    ];
  });
