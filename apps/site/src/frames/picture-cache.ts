import type { FrameSource } from './frame-source.ts';

/** Pictures kept for stepping to and fro. 720 x 1280 takes 3.7 MB a picture. */
const most = 40;

export type PictureCache = {
  readonly exact: boolean;
  /** The picture of a frame; it belongs to the cache and stays good until `most` others were asked for. */
  picture(frame: number): Promise<ImageBitmap>;
  close(): void;
};

/** A small cache before a source, which is asked for one frame after another, never for two at once. */
export const cachePictures = (source: FrameSource): PictureCache => {
  const kept = new Map<number, Promise<ImageBitmap>>();
  let turn: Promise<unknown> = Promise.resolve();
  let closed = false;

  const drop = (frame: number) => {
    const old = kept.get(frame);
    kept.delete(frame);
    old?.then((picture) => picture.close()).catch(() => undefined);
  };

  return {
    exact: source.exact,
    picture(frame) {
      const found = kept.get(frame);
      if (found !== undefined) {
        kept.delete(frame);
        kept.set(frame, found);
        return found;
      }
      const asked = turn.then(() => {
        if (closed) throw new Error('The clip was closed.');
        return source.picture(frame);
      });
      turn = asked.catch(() => kept.delete(frame));
      kept.set(frame, asked);
      for (const oldest of kept.keys()) {
        if (kept.size <= most) break;
        drop(oldest);
      }
      return asked;
    },
    close() {
      closed = true;
      for (const frame of [...kept.keys()]) drop(frame);
      source.close();
    },
  };
};
