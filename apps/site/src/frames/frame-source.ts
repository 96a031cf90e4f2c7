export type Decoding = {
  readonly wanted: number;
  /** Nothing but the wanted frame is of use. */
  readonly alone: boolean;
  /** Takes a picture over: whoever is given it closes it. */
  readonly give: (frame: number, picture: ImageBitmap) => void;
  /** Aborted when what is still to come is of no use any more. */
  readonly signal: AbortSignal;
};

/** Something that gives the picture of any frame of one clip, and the pictures that come with it. */
export type FrameSource = {
  /** Exact: decoded by the frame; otherwise a video element stopped in the middle of the frame. */
  readonly exact: boolean;
  /** One call at a time. @throws Error when the wanted frame cannot be had */
  decode(asked: Decoding): Promise<void>;
  close(): void;
};
