import { Input, MP4, QTFF, UrlSource, VideoSampleSink } from 'mediabunny';
import type { FrameSource } from './frame-source.ts';
import { middleOf } from './frame-table.ts';

/** Frames decoded one by one. Null where this browser cannot decode the clip. */
export const openDecodedFrames = async (
  address: string,
  timesS: readonly number[],
): Promise<FrameSource | null> => {
  if (typeof VideoDecoder === 'undefined') return null;
  const input = new Input({ source: new UrlSource(address), formats: [MP4, QTFF] });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (track === null || !(await track.canDecode()))
      throw new Error('This browser does not decode the clip.');
    const sink = new VideoSampleSink(track);
    return {
      exact: true,
      async picture(frame) {
        const sample = await sink.getSample(middleOf(timesS, frame));
        if (sample === null) throw new Error(`Frame ${frame} is not in the clip.`);
        const decoded = sample.toVideoFrame();
        try {
          return await createImageBitmap(decoded);
        } finally {
          decoded.close();
          sample.close();
        }
      },
      close: () => input.dispose(),
    };
  } catch {
    input.dispose();
    return null;
  }
};
