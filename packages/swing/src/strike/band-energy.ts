/** Below this a strike has little to say and wind has much: common practice, no source. */
const cutHz = 1_200;

/**
 * Energy of a sound above 1.2 kHz, in steps of one millisecond: a second-order high-pass (R. Bristow-Johnson, Cookbook
 * formulae for audio EQ biquad filter coefficients, W3C note 2021; Q = 1/sqrt 2) and the mean of squares of each step.
 *
 * @param samples one channel, -1 to 1
 * @param rate samples a second, 4,000 to 192,000
 * @returns mean squares, one a millisecond; the last, unfinished step is left out
 * @throws RangeError on another rate
 */
export function bandEnergy(samples: Float32Array, rate: number): Float64Array {
  if (!(rate >= 4_000 && rate <= 192_000)) throw new RangeError(`${rate} samples a second.`);
  const w = (2 * Math.PI * cutHz) / rate;
  const [cos, alpha] = [Math.cos(w), Math.sin(w) / Math.SQRT2];
  const a0 = 1 + alpha;
  const [b0, b1, a1, a2] = [(1 + cos) / 2 / a0, -(1 + cos) / a0, (-2 * cos) / a0, (1 - alpha) / a0];
  const energy = new Float64Array(Math.floor((samples.length / rate) * 1000));
  const counts = new Float64Array(energy.length);
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let index = 0; index < samples.length; index += 1) {
    const x = samples[index] ?? 0;
    const y = b0 * x + b1 * x1 + b0 * x2 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    const step = Math.floor((index / rate) * 1000);
    if (step >= energy.length) break;
    energy[step] = (energy[step] ?? 0) + y * y;
    counts[step] = (counts[step] ?? 0) + 1;
  }
  return energy.map((sum, step) => sum / Math.max(1, counts[step] ?? 1));
}
