import { FilePathSource, Input, MP4, QTFF } from 'mediabunny';

/** Whether a checked file has a track of sound; by its header alone. */
export async function hasSound(path: string): Promise<boolean> {
  const input = new Input({ formats: [MP4, QTFF], source: new FilePathSource(path) });
  try {
    return (await input.getPrimaryAudioTrack()) !== null;
  } finally {
    input.dispose();
  }
}
