import type { ClipFacts } from '../../../../uploads/upload-state.ts';
import type { Uploading } from '../../../../uploads/use-upload.ts';
import type { View } from './draft.ts';
import type { Checked } from './use-clip-check.ts';

/** The place of one view's video: what was found in it on the device, and its upload. */
export type Slot = {
  readonly facts: ClipFacts;
  readonly uploading: Uploading;
  readonly checked: Checked;
  readonly check: (file: File) => Promise<void>;
  readonly anyway: () => void;
  readonly remove: () => void;
};
export type Slots = Readonly<Record<View, Slot>>;

export const isOnItsWay = ({ uploading }: Pick<Slot, 'uploading'>): boolean =>
  uploading.state.kind === 'running' || uploading.state.kind === 'waiting';

/** Whether there is anything of a video in the place. */
export const isFilled = ({ uploading, checked }: Slot): boolean =>
  uploading.state.kind !== 'none' || checked.kind === 'looking' || checked.kind === 'asks';
