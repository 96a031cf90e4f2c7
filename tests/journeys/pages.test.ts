import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { desk, expectAccessible, openBrowser, openContext, phone, signIn } from './browser.ts';

type Listed = { items: { id: string }[] };

/** Every page that no other journey stands on for long, with what the demo tells: by axe, in both themes, nothing cut off. */
describe('the pages with the demo in them', () => {
  const { url, demo } = inject('service');
  const people = demo.academies[0]?.people ?? [];
  const complaints: string[] = [];
  let browser: Browser;

  const named = (start: string) => {
    const found = people.find(({ email }) => email.startsWith(`${start}@`));
    if (found === undefined) throw new Error(`The demo has no ${start}.`);
    return found;
  };
  const as = async (start: string, size: Parameters<Browser['newContext']>[0]) => {
    const context = await openContext(browser, size, complaints);
    const page = await context.newPage();
    await signIn(page, url, named(start));
    return { context, page };
  };
  const get = async <T>(context: BrowserContext, path: string): Promise<T> =>
    (await context.request.get(`${url}${path}`)).json();

  /** At both widths and in both themes: axe finds nothing and nothing lies beyond the edge. */
  const looksRight = async (page: Page, path: string): Promise<void> => {
    await page.goto(`${url}${path}`, { waitUntil: 'networkidle' });
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    const before = page.viewportSize();
    for (const width of [360, 1440]) {
      await page.setViewportSize({ width, height: 900 });
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        await expectAccessible(page);
        const beyond = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(beyond, `${path} at ${width}`).toBeLessThanOrEqual(0);
      }
    }
    await page.emulateMedia({ colorScheme: 'light' });
    if (before) await page.setViewportSize(before);
  };

  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());

  it('are sound for a student', async () => {
    const { context, page } = await as('finlo', phone);
    const { replies } = await get<{ replies: { id: string }[] }>(context, '/api/home');
    expect(replies.length).toBeGreaterThan(1);
    for (const path of ['/home', '/send', '/line-test', '/look', '/trial', '/filming'])
      await looksRight(page, path);
    await looksRight(page, `/replies/${replies[0]?.id}`);
    await page.getByRole('heading', { name: 'Then and now' }).waitFor();
    await context.close();
  }, 180_000);

  it('are sound for a coach and a manager', async () => {
    const { context, page } = await as('odile', desk);
    const { items } = await get<Listed>(context, '/api/students?limit=60');
    const id = items[0]?.id ?? '';
    for (const path of ['/faults', '/learning', '/model-swings', `/students/${id}`])
      await looksRight(page, path);
    await context.close();
  }, 180_000);

  it('say beside a marked clubhead how often the ground comes first, and by a line test once one is noted', async () => {
    const { context, page } = await as('tamsin', desk);
    type Row = { id: string; kind: string; student: { id: string; name: string } };
    const { items } = await get<{ items: Row[] }>(context, '/api/inbox?limit=100');
    const row = items.find(({ kind, student }) => kind === 'swing' && student.name.startsWith('Ruben'));
    if (row === undefined) throw new Error('The demo has no swing of Ruben waiting.');
    await looksRight(page, `/review/${row.id}`);
    const ground = page.getByRole('region', { name: 'The ground behind the ball' });
    await ground.getByText(/in 10 of these swings meet the ground more than 3 cm behind the ball/).waitFor();
    await ground.getByText(/^Low point \d+ mm further forward brings it to 1 in 10/).waitFor();
    await ground.getByText(/5 of 10 balls met the ground first/).waitFor();
    const figures = ground.getByText('Mean low point ahead of the ball');
    expect(await figures.isVisible()).toBe(false);
    await ground.getByText('Figures', { exact: true }).click();
    await figures.waitFor();
    const noted = await context.request.post(`${url}/api/students/${row.student.id}/line-tests`, {
      headers: { origin: url, 'idempotency-key': crypto.randomUUID() },
      data: { startsMm: [-60, -35, -45, -20, -30] },
    });
    expect(noted.status()).toBe(201);
    await page.reload({ waitUntil: 'networkidle' });
    await ground.getByText(/comes from the line test of 5 brushes/).waitFor();
    await context.close();
  }, 180_000);

  it('print as a drill card: cautions stay, what is for the screen alone goes', async () => {
    const { context, page } = await as('finlo', desk);
    const { replies } = await get<{ replies: { id: string }[] }>(context, '/api/home');
    await page.goto(`${url}/replies/${replies[0]?.id}`, { waitUntil: 'networkidle' });
    await page.emulateMedia({ media: 'print' });
    expect(
      await page
        .getByRole('region', { name: /^Cautions/ })
        .first()
        .isVisible(),
    ).toBe(true);
    for (const name of ['I’ve read this', 'Print the drill card', 'Send the question'])
      expect(await page.getByRole('button', { name }).isVisible(), name).toBe(false);
    expect(await page.getByRole('navigation').first().isVisible()).toBe(false);
    await context.close();
  });

  it('say no complaint', () => {
    expect(complaints).toEqual([]);
  });
});
