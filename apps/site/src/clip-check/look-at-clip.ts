import type { InputVideoTrack } from 'mediabunny';
import type { ClipLook } from './judge-clip.ts';
import { lightOf } from './light-of.ts';

const longestMs = 4000;
const sidePx = 32;

/** Brightness of one frame from the middle; null where this browser decodes no such picture. */
const lightIn = async (track: InputVideoTrack, atS: number): Promise<number | null> => {
  if (!(await track.canDecode())) return null;
  const { CanvasSink } = await import('mediabunny');
  const sink = new CanvasSink(track, { width: sidePx, height: sidePx, fit: 'fill' });
  const canvas = (await sink.getCanvas(atS))?.canvas;
  const context = canvas?.getContext('2d');
  if (context === null || context === undefined || !('getImageData' in context)) return null;
  return lightOf(context.getImageData(0, 0, sidePx, sidePx).data);
};

const look = async (file: File): Promise<ClipLook | null> => {
  const { BlobSource, Input, MP4, QTFF } = await import('mediabunny');
  const input = new Input({ source: new BlobSource(file), formats: [MP4, QTFF] });
  const track = await input.getPrimaryVideoTrack();
  if (track === null) return null;
  const durationS = await track.computeDuration();
  const { averagePacketRate } = await track.computePacketStats(100);
  return {
    durationS,
    widthPx: await track.getDisplayWidth(),
    heightPx: await track.getDisplayHeight(),
    fps: averagePacketRate,
    light: await lightIn(track, durationS / 2).catch(() => null),
  };
};

/**
 * Looks at a video on the device before it is sent. Null when the browser cannot read it, or not within four seconds:
 * then it is simply sent, and the service looks.
 */
export const lookAtClip = (file: File): Promise<ClipLook | null> => {
  const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), longestMs));
  return Promise.race([look(file).catch(() => null), late]);
};
