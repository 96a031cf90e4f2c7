/** Something that gives the picture of any frame of one clip. */
export type FrameSource = {
  /** Exact: decoded by the frame; otherwise a video element stopped in the middle of the frame. */
  readonly exact: boolean;
  /** A picture that belongs to the caller, who closes it. */
  picture(frame: number): Promise<ImageBitmap>;
  close(): void;
};
