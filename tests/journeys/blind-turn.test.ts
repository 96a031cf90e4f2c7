import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { desk, expectAccessible, keepPictures, openBrowser, openContext, signIn } from './browser.ts';
import { clipTruth, fatMarks } from './kept-swing.ts';

type Listed = { items: { id: string; kind: string; student: { name: string } }[] };
type Review = {
  heldBack: boolean;
  named: string | null;
  submission: { id: string; clips: { id: string }[] };
  marking: { version: number }[];
  evidence: { first: string | null; next: object | null; causes: object[]; readings: object[] }[];
};
type Learning = { blind: number; overruled: number };

/** A swing of the demo whose turn it always is: the order is held back until the coach has named a cause, by keys alone. */
describe('a blind turn', () => {
  const { url, demo } = inject('service');
  const truth = clipTruth('sway-away');
  const people = demo.academies[0]?.people ?? [];
  const complaints: string[] = [];
  let browser: Browser;
  let coach: BrowserContext;
  let page: Page;
  let id = '';

  const ask = async (method: string, path: string, data?: object, version?: number) => {
    const headers: Record<string, string> = { origin: url, 'idempotency-key': crypto.randomUUID() };
    if (version !== undefined) headers['if-match'] = `"${version}"`;
    const answer = await coach.request.fetch(`${url}${path}`, { method, headers, ...(data && { data }) });
    expect(answer.ok(), `${method} ${path}`).toBe(true);
    return answer.json();
  };
  const reviewNow = (): Promise<Review> => ask('GET', `/api/submissions/${id}/review`);
  const learned = (): Promise<Learning> => ask('GET', '/api/settings/learning');
  const turn = () => page.getByRole('region', { name: 'Which cause comes first?' });
  const order = () => page.getByRole('region', { name: 'Causes, the likeliest first' });

  beforeAll(async () => {
    browser = await openBrowser();
    coach = await openContext(browser, desk, complaints);
    page = await coach.newPage();
    const bertil = people.find(({ email }) => email.startsWith('bertil@'));
    if (bertil === undefined) throw new Error('The demo has no Bertil.');
    await signIn(page, url, bertil);
    const { items } = (await ask('GET', '/api/inbox?limit=60&kind=swing')) as Listed;
    id = items.find(({ student }) => student.name === 'Maren Oakhurst')?.id ?? '';
    await ask('POST', `/api/submissions/${id}/claim`);
  });
  afterAll(async () => {
    await ask('POST', `/api/submissions/${id}/release`);
    await browser.close();
  });

  it('shows what is measured and nothing of the order, on the screen or to whoever asks', async () => {
    const before = await reviewNow();
    const marks = fatMarks.map(([position, point]) => {
      const [x, y] = truth.points[position]?.[point] ?? [0, 0];
      return { position, point, frame: truth.positions[position] ?? 0, x, y, source: 'coach' };
    });
    const at = `/api/submissions/${id}/clips/${before.submission.clips[0]?.id}/marks`;
    await ask('PUT', at, { marks, observations: [] }, before.marking[0]?.version ?? 0);
    await page.goto(`${url}/review/${id}`);
    await turn().waitFor();
    await page.getByText('You have this swing.').waitFor();
    expect(
      await page.getByRole('region', { name: 'Measured' }).getByRole('listitem').count(),
    ).toBeGreaterThan(3);
    const names = await turn().getByRole('listitem').allInnerTexts();
    expect(names.length).toBeGreaterThan(8);
    expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')));
    expect(await order().count()).toBe(0);
    const said = await page.locator('body').textContent();
    for (const words of [
      'likeliest',
      'Most worth doing next',
      'Nothing stands out',
      'Enough:',
      'strong sign',
    ]) {
      expect(said).not.toContain(words);
    }
    const held = await reviewNow();
    expect(held).toMatchObject({ heldBack: true, named: null });
    expect(held.evidence[0]).toMatchObject({ first: null, next: null, causes: [] });
    expect(held.evidence[0]?.readings.length).toBeGreaterThan(3);
    await expectAccessible(page);
    await keepPictures(page, 'blind-turn');
  });

  it('is over when the coach names a cause by keys: the order comes, the own choice is marked and fills the reply', async () => {
    const { blind } = await learned();
    const name = turn().getByRole('button', { name: /^Hang-back/ });
    await name.focus();
    await page.keyboard.press('Enter');
    await order().waitFor();
    const own = order()
      .getByRole('listitem')
      .filter({ hasText: 'Named before the order was shown. It stands at place' });
    await own.getByText('Chosen as the first cause').waitFor();
    expect(await own.getByRole('heading', { level: 3 }).textContent()).toMatch(/^Hang-back/);
    expect(await order().getByRole('heading', { level: 3 }).first().textContent()).toMatch(/^Sway away/);
    // Whoever came by keys goes on where the order begins.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('causes-title');
    await vi.waitFor(
      async () =>
        expect((await page.getByLabel('Words to the student').inputValue()).length).toBeGreaterThan(40),
      30_000,
    );
    expect(await reviewNow()).toMatchObject({ heldBack: false, named: 'hang-back' });
    expect((await reviewNow()).evidence[0]?.first).toBe('sway-away');
    expect((await learned()).blind).toBe(blind + 1);
    await expectAccessible(page);
    await keepPictures(page, 'blind-turn-over');
  });

  it('is told by what the academy has learned; a manager is asked before it begins anew', async () => {
    await page.getByRole('link', { name: 'Faults' }).first().click();
    await page.getByRole('link', { name: 'What this academy has learned' }).click();
    await page.getByRole('heading', { level: 1, name: 'What this academy has learned' }).waitFor();
    const fat = page.getByRole('table', { name: 'Fat', exact: true });
    await fat.getByRole('rowheader', { name: /^Hang-back/ }).waitFor();
    expect(await page.getByRole('button', { name: /Begin anew/ }).count()).toBe(0);
    await expectAccessible(page);

    const office = await openContext(browser, desk, complaints);
    const manager = people.find(({ role }) => role === 'manager');
    if (manager === undefined) throw new Error('The demo has no manager.');
    const atOffice = await office.newPage();
    await signIn(atOffice, url, manager);
    await atOffice.goto(`${url}/learning`);
    const { blind, overruled } = await learned();
    await atOffice.getByText(`${blind} named before the order was shown`).waitFor();
    await atOffice.getByRole('button', { name: 'Begin anew …' }).click();
    await atOffice.getByText(`${blind + overruled} swings will no longer count.`).waitFor();
    await atOffice.getByRole('button', { name: 'Keep them' }).click();
    expect(await learned()).toEqual(expect.objectContaining({ blind, overruled }));
    await keepPictures(atOffice, 'learning');
    expect(complaints).toEqual([]);
    await office.close();
  });
});
