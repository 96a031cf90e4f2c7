import type { FilterContext } from 'node-av/lib';
import type { Disposal } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';
import type { NodeAvInput } from './node-av-input.ts';
import type { TranscodeJob } from './transcoder.ts';
import { uprightFilters } from './upright-filters.ts';

/** The chain of filters that turns, scales and converts, from `source` to `sink`. */
export async function openUprightGraph(
  av: NodeAv,
  job: TranscodeJob,
  input: NodeAvInput,
  disposal: Disposal,
): Promise<{ source: FilterContext; sink: FilterContext }> {
  const graph = new av.FilterGraph();
  graph.alloc();
  disposal.push(() => graph.free());
  const make = (name: string, label: string, options: string): FilterContext => {
    const filter = av.Filter.getByName(name);
    const made = filter === null ? null : graph.createFilter(filter, label, options === '' ? null : options);
    if (made === null) throw new Error(`The filter ${name} cannot be made`);
    return made;
  };
  const { decoder, timeBase } = input;
  const format = decoder.pixelFormat < 0 ? av.AV_PIX_FMT_YUV420P : decoder.pixelFormat;
  const source = make(
    'buffer',
    'in',
    `video_size=${decoder.width}x${decoder.height}:pix_fmt=${format}:time_base=${timeBase.num}/${timeBase.den}:pixel_aspect=1/1`,
  );
  let last = source;
  for (const [index, [name, options]] of uprightFilters(job).entries()) {
    const next = make(name, `${name}${index}`, options);
    av.FFmpegError.throwIfError(last.link(0, next, 0), 'joining filters');
    last = next;
  }
  const sink = make('buffersink', 'out', '');
  av.FFmpegError.throwIfError(last.link(0, sink, 0), 'joining filters');
  av.FFmpegError.throwIfError(await graph.config(), 'setting up filters');
  return { source, sink };
}
