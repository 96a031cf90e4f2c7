/** Little-endian 32-bit samples, cut anywhere, as numbers; what is no finite number counts as silence. */
export function floatsOf(parts: readonly Buffer[]): Float32Array {
  const bytes = Buffer.concat(parts);
  const samples = new Float32Array(Math.floor(bytes.length / 4));
  for (let index = 0; index < samples.length; index += 1) {
    const value = bytes.readFloatLE(index * 4);
    samples[index] = Number.isFinite(value) ? value : 0;
  }
  return samples;
}
