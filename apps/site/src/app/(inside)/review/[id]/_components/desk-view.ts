import type { View } from '@ballfirst/swing/marks/marks';
import type { Evidence, Marking } from '../_marking/marking.ts';

/** What the rest of the screen needs to know of the desk: its marks, evidence and the frame on the stage. */
export type DeskView = {
  readonly clipId: string;
  readonly marks: Marking['marks'];
  readonly observations: Marking['observations'];
  /** Where the camera stood. */
  readonly camera: View;
  readonly evidence: Evidence;
  readonly frame: number;
  /** Whether anything is marked or seen yet. */
  readonly begun: boolean;
};
