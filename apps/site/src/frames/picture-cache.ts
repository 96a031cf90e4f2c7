import type { FrameSource } from './frame-source.ts';

/** Pictures kept for stepping to and fro. 720 x 1280 takes 3.7 MB a picture. */
const most = 48;
/** A rendition has a key frame so often: frames farther apart come from two runs. */
const runFrames = 10;

export type PictureCache = {
  readonly exact: boolean;
  /** The picture of a frame at once, where it is kept. It belongs to the cache: draw it now. */
  ready(frame: number): ImageBitmap | null;
  /** The picture of a frame, before everything else. It belongs to the cache: draw it when it comes. */
  picture(frame: number): Promise<ImageBitmap>;
  /** The picture of a frame, when nothing is more urgent. */
  later(frame: number): Promise<ImageBitmap>;
  /** Decodes a frame and its neighbours when nothing is more urgent, so that the next steps find them. */
  ahead(frame: number): void;
  close(): void;
};

type Waiting = { resolve: (picture: ImageBitmap) => void; reject: (error: unknown) => void };
type Task = { frame: number; urgent: boolean; alone: boolean };

/** A cache before a source, which is asked for one frame after another: what was wanted last comes first. */
export const cachePictures = (source: FrameSource): PictureCache => {
  const kept = new Map<number, ImageBitmap>();
  const waiting = new Map<number, Waiting[]>();
  const urgent: Task[] = [];
  const idle: Task[] = [];
  let atWork: { task: Task; stop: AbortController } | null = null;
  /** The frame that was looked at last: what lies farthest from it is let go first, never what comes next. */
  let looked = 0;
  let closed = false;

  const give = (frame: number, picture: ImageBitmap) => {
    if (closed || kept.has(frame)) picture.close();
    else kept.set(frame, picture);
    const found = kept.get(frame);
    for (const one of waiting.get(frame) ?? []) {
      if (found === undefined) one.reject(new Error('The clip was closed.'));
      else one.resolve(found);
    }
    waiting.delete(frame);
    while (kept.size > most) {
      const [far, old] = [...kept]
        .filter(([other]) => other !== frame)
        .reduce((a, b) => (Math.abs(b[0] - looked) > Math.abs(a[0] - looked) ? b : a));
      kept.delete(far);
      old.close();
    }
  };
  const fail = (frame: number, error: unknown) => {
    for (const one of waiting.get(frame) ?? []) one.reject(error);
    waiting.delete(frame);
  };

  const work = async () => {
    if (atWork !== null) return;
    for (let task = urgent.pop() ?? idle.shift(); task !== undefined; task = urgent.pop() ?? idle.shift()) {
      const { frame, alone } = task;
      if (kept.has(frame)) continue;
      const stop = new AbortController();
      atWork = { task, stop };
      try {
        await source.decode({ wanted: frame, alone, give, signal: stop.signal });
      } catch (error) {
        fail(frame, error);
      }
    }
    atWork = null;
  };
  const add = (task: Task) => {
    if (task.urgent) urgent.push(task);
    else idle.push(task);
    // A run elsewhere gives way once its own frame is out; one that is about to give this frame goes on.
    if (task.urgent && atWork !== null && !waiting.has(atWork.task.frame)) {
      if (atWork.task.alone || Math.abs(atWork.task.frame - task.frame) >= runFrames) atWork.stop.abort();
    }
    work();
  };
  const ready = (frame: number): ImageBitmap | null => {
    looked = frame;
    return kept.get(frame) ?? null;
  };
  const ask = (frame: number, task: Omit<Task, 'frame'>): Promise<ImageBitmap> => {
    const found = task.urgent ? ready(frame) : kept.get(frame);
    if (found) return Promise.resolve(found);
    if (closed) return Promise.reject(new Error('The clip was closed.'));
    return new Promise((resolve, reject) => {
      waiting.set(frame, [...(waiting.get(frame) ?? []), { resolve, reject }]);
      add({ frame, ...task });
    });
  };

  return {
    exact: source.exact,
    ready,
    picture: (frame) => ask(frame, { urgent: true, alone: false }),
    later: (frame) => ask(frame, { urgent: false, alone: true }),
    ahead(frame) {
      if (!closed && !kept.has(frame) && atWork?.task.frame !== frame && idle.length < most)
        add({ frame, urgent: false, alone: false });
    },
    close() {
      closed = true;
      atWork?.stop.abort();
      for (const frame of [...waiting.keys()]) fail(frame, new Error('The clip was closed.'));
      urgent.length = 0;
      idle.length = 0;
      for (const picture of kept.values()) picture.close();
      kept.clear();
      source.close();
    },
  };
};
