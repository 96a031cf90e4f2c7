// The demo's own swings that wait, and where their points truly lie: the clip is found by its bytes.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';

const folder = join(import.meta.dirname, '..', '..', '..', 'packages', 'demo', 'clips');

export type Truth = {
  readonly hand: 'right' | 'left';
  readonly view: string;
  readonly frames: number;
  readonly positions: Readonly<Record<string, number>>;
  readonly points: Readonly<Record<string, Readonly<Record<string, readonly [number, number]>>>>;
};
export type Waiting = {
  readonly id: string;
  readonly name: string;
  readonly leadFault: string | null;
  readonly truth: Truth;
};
type Row = { id: string; kind: string; student: { name: string }; leadFault: string | null; claim: unknown };
type Review = {
  submission: { pain: string; clips: { view: string; media: { rendition: string } | null }[] };
};

const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

const truths = (): ReadonlyMap<string, Truth> =>
  new Map(
    readdirSync(folder)
      .filter((name) => name.endsWith('.mp4'))
      .flatMap((name) => {
        try {
          const kept = readFileSync(join(folder, 'truth', name.replace('.mp4', '.json')), 'utf8');
          return [[hashOf(readFileSync(join(folder, name))), JSON.parse(kept) as Truth] as const];
        } catch {
          // A clip without a truth beside it is no swing to mark.
          return [];
        }
      }),
  );

/** The unclaimed swings of the inbox whose one clip is a kept one; without a pain, which asks for more than a reply. */
export const waitingSwings = async (
  coach: BrowserContext,
  url: string,
  isEnough: (found: readonly Waiting[]) => boolean,
): Promise<readonly Waiting[]> => {
  const known = truths();
  const asked = await coach.request.get(`${url}/api/inbox?limit=50&kind=swing`);
  const { items } = (await asked.json()) as { items: Row[] };
  const found: Waiting[] = [];
  for (const { id, student, leadFault, claim } of items) {
    if (claim !== null || isEnough(found)) continue;
    const review = (await (await coach.request.get(`${url}/api/submissions/${id}/review`)).json()) as Review;
    const [clip, ...more] = review.submission.clips;
    if (clip?.media === null || clip === undefined || more.length > 0) continue;
    if (review.submission.pain !== 'none') continue;
    const bytes = await (await coach.request.get(`${url}${clip.media.rendition}`)).body();
    const truth = known.get(hashOf(bytes));
    if (truth !== undefined) found.push({ id, name: student.name, leadFault, truth });
  }
  return found;
};
