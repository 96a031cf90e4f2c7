import { Club, View } from '@ballfirst/contracts/words';
import type { Prisma } from '@ballfirst/db/generated/client';
import { mediaPath } from '../clips/keys.ts';
import type { Reply } from '../operation-types.ts';

export const modelSwingInclude = {
  by: true,
  clip: { include: { submission: true, student: { include: { membership: true } } } },
} as const satisfies Prisma.ModelSwingInclude;
type Row = Prisma.ModelSwingGetPayload<{ include: typeof modelSwingInclude }>;

/** A swing of the collection as the contract says it; null: its clip belongs to no submission. */
export const modelSwingOf = ({ clip, by, ...row }: Row): Reply<'keepModelSwing'> | null =>
  clip.submission === null
    ? null
    : {
        clipId: clip.id,
        name: row.name,
        player: clip.student.membership.name,
        club: Club.parse(clip.submission.club),
        view: View.parse(clip.view),
        permission: row.permission,
        permittedOn: row.permittedOn.toISOString().slice(0, 10),
        keptBy: by.name,
        keptAt: row.keptAt.toISOString(),
        poster: clip.status === 'ready' ? mediaPath(clip.id, 'poster.jpg') : null,
      };
