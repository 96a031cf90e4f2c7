import type { TranscodeJob } from './transcoder.ts';

type Turn = Pick<TranscodeJob, 'rotationDeg' | 'flipped' | 'widthPx' | 'heightPx'>;

/**
 * The filters, as name and arguments, that turn the stored picture upright, scale it, and bring it to 8-bit 4:2:0.
 *
 * @throws RangeError on a turn that is not a quarter
 */
export function uprightFilters(job: Turn): readonly (readonly [name: string, options: string])[] {
  const turns: Record<number, readonly (readonly [string, string])[]> = {
    0: [],
    90: [['transpose', 'dir=clock']],
    180: [
      ['hflip', ''],
      ['vflip', ''],
    ],
    270: [['transpose', 'dir=cclock']],
  };
  const turn = turns[job.rotationDeg];
  if (turn === undefined) throw new RangeError(`A turn of ${job.rotationDeg} degrees`);
  return [
    ...turn,
    ...(job.flipped ? ([['hflip', '']] as const) : []),
    ['scale', `w=${job.widthPx}:h=${job.heightPx}:flags=bicubic:out_range=tv`],
    ['setsar', 'sar=1'],
    ['format', 'pix_fmts=yuv420p'],
  ];
}
