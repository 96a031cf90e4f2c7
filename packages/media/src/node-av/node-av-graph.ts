import type { FilterContext } from 'node-av/lib';
import type { Disposal } from './disposal.ts';
import type { NodeAv } from './load-node-av.ts';

type Filters = readonly (readonly [name: string, options: string])[];

/** A chain of filters from `source` to `sink`; the first of the list takes frames in, the last gives them out. */
export async function openGraph(
  av: NodeAv,
  filters: Filters,
  disposal: Disposal,
): Promise<{ source: FilterContext; sink: FilterContext }> {
  const graph = new av.FilterGraph();
  graph.alloc();
  disposal.push(() => graph.free());
  const made = filters.map(([name, options], index) => {
    const filter = av.Filter.getByName(name);
    const one = filter === null ? null : graph.createFilter(filter, `${name}${index}`, options || null);
    if (one === null) throw new Error(`The filter ${name} cannot be made`);
    return one;
  });
  const [source, sink] = [made[0], made.at(-1)];
  if (source === undefined || sink === undefined) throw new RangeError('A chain of no filters');
  for (const [index, filter] of made.entries()) {
    const next = made[index + 1];
    if (next !== undefined) av.FFmpegError.throwIfError(filter.link(0, next, 0), 'joining filters');
  }
  av.FFmpegError.throwIfError(await graph.config(), 'setting up filters');
  return { source, sink };
}
