import { clipPath, clipTruth, keptClips } from '@ballfirst/demo/golfer/kept-clips';
import { chooseTranscoder } from '@ballfirst/media/choose-transcoder';
import { readFrameTable } from '@ballfirst/media/header/frame-times';
import { lookAt } from '@ballfirst/media/look/look-at';
import { expect, it } from 'vitest';

// The source of every value here is the synthetic golfer: the instant at which its clubhead meets the ball. Its cameras
// stand 3 to 4.3 m away, and the listener, who is not told, takes 4 m.

it.each(keptClips)(
  '$id: the strike is heard within three of its doubts of where it was',
  async ({ id }) => {
    const truth = clipTruth(id);
    const path = clipPath(id);
    const { suggestion } = await lookAt(await chooseTranscoder(), path, await readFrameTable(path));
    const { impact, window, strip } = suggestion;
    expect(impact).toMatchObject({ confidence: 'likely', others: 0 });
    const wrongMs = Math.abs((impact?.impactMs ?? 0) - 1000 * truth.momentTimesS.impact);
    expect(wrongMs).toBeLessThan(3 * (impact?.uMs ?? 0));
    // Coverage factor 3, and never more than three frames out.
    expect(Math.abs((impact?.frame ?? 0) - truth.positions.impact)).toBeLessThanOrEqual(3);
    expect(window?.first).toBeLessThan(truth.positions['lead-arm-parallel-down']);
    expect(window?.last).toBeGreaterThan(truth.positions.impact);
    expect(strip.length).toBeGreaterThan(8);
  },
  60_000,
);
