import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect } from 'vitest';

export const screenshots = fileURLToPath(new URL('./screenshots/', import.meta.url));
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Opens the browser that `npm test` found. */
export const openBrowser = (): Promise<Browser> => {
  const executablePath = process.env.CHROMIUM_PATH;
  if (!executablePath) throw new Error('CHROMIUM_PATH names no browser; run the journeys by npm test.');
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // A microphone that hums, allowed without asking: for talk-throughs.
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
    ],
  });
};

export const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, deviceScaleFactor: 2 } as const;
export const desk = { viewport: { width: 1440, height: 900 } } as const;

/** Signs in by the form. */
export const signIn = async (
  page: Page,
  url: string,
  person: { email: string; password: string },
): Promise<void> => {
  await page.goto(`${url}/sign-in`);
  await page.getByLabel('Email').fill(person.email);
  await page.getByLabel('Password').fill(person.password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL((it) => !it.pathname.startsWith('/sign-in'));
};

/** Pictures of a page as it stands: at 360, 768 and 1440 px, light and dark. */
export const keepPictures = async (page: Page, name: string): Promise<void> => {
  mkdirSync(screenshots, { recursive: true });
  const before = page.viewportSize();
  for (const [width, height] of [
    [360, 740],
    [768, 1024],
    [1440, 900],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await page.screenshot({
        path: path.join(screenshots, `${name}-${width}-${colorScheme}.png`),
        fullPage: true,
      });
    }
  }
  await page.emulateMedia({ colorScheme: 'light' });
  if (before) await page.setViewportSize(before);
};

type Violation = { id: string; help: string; nodes: { html: string }[] };

/** Finds nothing wrong by axe (WCAG 2.2 A and AA rules). */
export const expectAccessible = async (page: Page): Promise<void> => {
  // Evaluated by the debugger, which the page's policy does not bind: no exception has to be made for a test.
  await page.evaluate(axeSource);
  const violations = await page.evaluate(async (): Promise<Violation[]> => {
    const { axe } = window as unknown as {
      axe: { run(options: object): Promise<{ violations: Violation[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    return (await axe.run({ runOnly: { type: 'tag', values: tags } })).violations;
  });
  const words = violations.map(
    (it) => `${it.id}: ${it.help}\n  ${it.nodes.map((node) => node.html.slice(0, 160)).join('\n  ')}`,
  );
  expect(words, `axe on ${page.url()}`).toEqual([]);
};

/** A context whose pages fail the test when a script throws or the policy refuses something. */
export const openContext = async (
  browser: Browser,
  options: Parameters<Browser['newContext']>[0],
  complaints: string[],
): Promise<BrowserContext> => {
  const context = await browser.newContext({
    ...options,
    timezoneId: 'Europe/London',
    locale: 'en-GB',
    reducedMotion: 'reduce',
  });
  context.on('weberror', (error) => complaints.push(String(error.error())));
  context.on('console', (message) => {
    if (message.type() === 'error' && /Content Security Policy/i.test(message.text()))
      complaints.push(message.text());
  });
  return context;
};
