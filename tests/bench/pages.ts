// What the pages cost the person in front of them: the script that a student's form loads, compressed; and on a machine four
// times slower how long the inbox takes to show its largest part and to answer a key. The measures are those of
// https://www.w3.org/TR/largest-contentful-paint/ and https://www.w3.org/TR/event-timing/, read in Chromium.
import { writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { findBrowser } from '../../apps/cli/src/test-run/find-browser.ts';
import { inboxWords } from '../../apps/site/src/words/inbox.ts';
import { historyTold, type Service, startService } from '../journeys/service.ts';
import { quantile } from './inbox-parts/timing.ts';
import { launchBrowser, signedIn } from './parts/signed-in.ts';

const rounds = process.env.BENCH_QUICK === '1' ? 5 : 15;
const slower = 4;
const keys = ['j', 'j', 'k', 'j', 'j', 'k', '?', 'Escape'] as const;

type Figure = { what: string; value?: number; unit: string; n?: number; why?: string };
const what = [
  ['form-js-kb', 'kB'],
  ['inbox-lcp-ms', 'ms'],
  ['inbox-inp-ms', 'ms'],
] as const;

/** All script that the form has loaded once it is quiet, as gzip makes it, in kilobytes of 1000. */
async function formScript(browser: Browser, service: Service): Promise<Figure> {
  const { context, page } = await signedIn(browser, service, 'student', { width: 360, height: 740 });
  await page.close();
  const fresh = await context.newPage();
  const sizes: Promise<number>[] = [];
  fresh.on('response', (response) => {
    if (response.request().resourceType() !== 'script') return;
    sizes.push(response.body().then((body) => gzipSync(body).length));
  });
  await fresh.goto(`${service.url}/send`, { waitUntil: 'networkidle' });
  const bytes = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
  await context.close();
  return { what: 'form-js-kb', value: bytes / 1000, unit: 'kB', n: sizes.length };
}

type Watched = { lcpMs: number; heldMs: number[] };
declare global {
  interface Window {
    watched: Watched;
  }
}

/** Runs in the page before anything else: keeps the largest paint and how long each key was held up until the next paint. */
const watch = (): void => {
  window.watched = { lcpMs: 0, heldMs: [] };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) window.watched.lcpMs = entry.startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      if ('interactionId' in entry && entry.interactionId !== 0) window.watched.heldMs.push(entry.duration);
    }
  }).observe({ type: 'event', buffered: true, durationThreshold: 16 } as PerformanceObserverInit);
};

/** Opens the inbox and waits until it follows what happens, as it says itself: then its scripts have run. */
async function openInbox(page: Page, url: string): Promise<number> {
  await page.goto(`${url}/inbox`);
  await page.locator('main li').first().waitFor();
  await page.getByText(inboxWords.live.live, { exact: true }).waitFor();
  return page.evaluate(() => window.watched.lcpMs);
}

/** A key pressed as soon as the list is seen, while its scripts are still on their way. */
async function pressEarly(page: Page, url: string): Promise<number> {
  await page.goto(`${url}/inbox`, { waitUntil: 'commit' });
  await page.locator('main li').first().waitFor();
  await page.keyboard.press('j');
  await page.getByText(inboxWords.live.live, { exact: true }).waitFor();
  return page.evaluate(() => Math.max(16, ...window.watched.heldMs));
}

/** Moves through the list by keys. @returns the slowest answer: shorter ones than 16 ms are not told apart from none */
async function pressKeys(page: Page): Promise<number> {
  for (const key of keys) {
    await page.keyboard.press(key);
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0))));
  }
  return page.evaluate(() => Math.max(16, ...window.watched.heldMs));
}

const slowPage = async (context: BrowserContext): Promise<Page> => {
  const page = await context.newPage();
  const tools = await context.newCDPSession(page);
  await tools.send('Emulation.setCPUThrottlingRate', { rate: slower });
  return page;
};

/** Each round in a new page of a coach who has been here before; the first one warms server and cache and is not counted. */
async function slowInbox(browser: Browser, service: Service): Promise<Figure[]> {
  const { context } = await signedIn(browser, service, 'coach', { width: 1440, height: 900 });
  await context.addInitScript(watch);
  const [paints, answers, early]: [number[], number[], number[]] = [[], [], []];
  for (let round = 0; round <= rounds; round += 1) {
    const page = await slowPage(context);
    const [paint, answer] = [await openInbox(page, service.url), await pressKeys(page)];
    await page.close();
    const other = await slowPage(context);
    const first = await pressEarly(other, service.url);
    await other.close();
    if (round === 0) continue;
    paints.push(paint);
    answers.push(answer);
    early.push(first);
  }
  await context.close();
  const figure = (name: string, values: number[]): Figure => ({
    ...{ what: name, value: quantile(values, 0.75), unit: 'ms', n: values.length },
  });
  return [
    figure('inbox-lcp-ms', paints),
    figure('inbox-inp-ms', answers),
    figure('a key before the scripts have run', early),
  ];
}

async function measure(): Promise<Figure[]> {
  const executablePath = findBrowser(process.env);
  if (!executablePath) return what.map(([name, unit]) => ({ what: name, unit, why: 'there is no browser' }));
  const service = await startService();
  const browser = await launchBrowser(executablePath);
  try {
    // What is told beside the service at its first start would be measured too.
    await historyTold(service.home);
    return [await formScript(browser, service), ...(await slowInbox(browser, service))];
  } finally {
    await browser.close();
    await service.stop();
  }
}

const figures = await measure();
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
