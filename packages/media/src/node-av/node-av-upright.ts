import type { FilterContext } from 'node-av/lib';
import type { TranscodeJob } from '../transcoder.ts';
import { uprightFilters } from '../upright-filters.ts';
import type { Disposal } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';
import { openGraph } from './node-av-graph.ts';
import type { NodeAvInput } from './node-av-input.ts';

/** The filter that takes decoded pictures in. */
export function pictureSource(av: NodeAv, { decoder, timeBase }: NodeAvInput): readonly [string, string] {
  const format = decoder.pixelFormat < 0 ? av.AV_PIX_FMT_YUV420P : decoder.pixelFormat;
  const size = `video_size=${decoder.width}x${decoder.height}:pix_fmt=${format}`;
  return ['buffer', `${size}:time_base=${timeBase.num}/${timeBase.den}:pixel_aspect=1/1`];
}

/** The chain of filters that turns, scales and converts, from `source` to `sink`. */
export const openUprightGraph = (
  av: NodeAv,
  job: TranscodeJob,
  input: NodeAvInput,
  disposal: Disposal,
): Promise<{ source: FilterContext; sink: FilterContext }> =>
  openGraph(av, [pictureSource(av, input), ...uprightFilters(job), ['buffersink', '']], disposal);
