// How many actions a reply costs: a scripted coach in Chromium answers swings of the demo that wait. A click, a tap, a key or
// one typed field is an action; the machine's own time and the coach's looking are not counted.
import { writeFileSync } from 'node:fs';
import { findBrowser } from '../../apps/cli/src/test-run/find-browser.ts';
import { type Service, startService } from '../journeys/service.ts';
import { launchBrowser, signedIn } from './parts/signed-in.ts';
import {
  chooseAndSend,
  filmAgain,
  markFirstPass,
  openAndClaim,
  tapObservations,
} from './reply-parts/coach.ts';
import { countingHand } from './reply-parts/hand.ts';
import { type Waiting, waitingSwings } from './reply-parts/swings.ts';

const quick = process.env.BENCH_QUICK === '1';
/** So many swings each way; the dearest counts. */
const most = quick ? 1 : 3;

type Figure = { what: string; value?: number; unit: string; n?: number; why?: string };
const what = ['fat-actions', 'unmarked-actions', 'film-again-actions'] as const;

const answerAll = async (service: Service, executablePath: string): Promise<Figure[]> => {
  const browser = await launchBrowser(executablePath);
  try {
    const { context, page } = await signedIn(browser, service, 'coach', { width: 1440, height: 1000 });
    const isFat = ({ leadFault, truth }: Waiting) => leadFault === 'fat' && truth.view === 'face-on';
    const waiting = [
      ...(await waitingSwings(
        context,
        service.url,
        (found) => found.length >= 3 * most && found.filter(isFat).length >= most,
      )),
    ];
    /** Takes swings out of what waits; none is answered twice. */
    const take = (fits: (swing: Waiting) => boolean): readonly Waiting[] => {
      const taken = waiting.filter(fits).slice(0, most);
      for (const swing of taken) waiting.splice(waiting.indexOf(swing), 1);
      return taken;
    };
    const counted = async (
      name: (typeof what)[number],
      swings: readonly Waiting[],
      answer: (hand: ReturnType<typeof countingHand>, swing: Waiting) => Promise<void>,
    ): Promise<Figure> => {
      const costs: number[] = [];
      for (const swing of swings) {
        const hand = countingHand(page);
        await openAndClaim(page, hand, service.url, swing);
        await answer(hand, swing);
        costs.push(hand.actions());
      }
      if (costs.length === 0) return { what: name, unit: 'actions', why: 'no such swing waits in the demo' };
      return { what: name, value: Math.max(...costs), unit: 'actions', n: costs.length };
    };
    const fat = await counted('fat-actions', take(isFat), async (hand, { truth }) => {
      await markFirstPass(page, hand, truth);
      await tapObservations(page, hand);
      await chooseAndSend(page, hand);
    });
    const unmarked = await counted(
      'unmarked-actions',
      take(() => true),
      async (hand) => {
        await tapObservations(page, hand);
        await chooseAndSend(page, hand);
      },
    );
    const again = await counted(
      'film-again-actions',
      take(() => true),
      (hand) => filmAgain(page, hand),
    );
    return [fat, unmarked, again];
  } finally {
    await browser.close();
  }
};

const measure = async (): Promise<Figure[]> => {
  const executablePath = findBrowser(process.env);
  if (!executablePath) return what.map((one) => ({ what: one, unit: 'actions', why: 'there is no browser' }));
  const service = await startService();
  try {
    return await answerAll(service, executablePath);
  } finally {
    await service.stop();
  }
};

const figures = await measure();
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
