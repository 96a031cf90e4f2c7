import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { desk, expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile, clipTruth, fatMarks } from './kept-swing.ts';
import { seeOrder } from './see-order.ts';

type Marking = {
  clipId: string;
  version: number;
  marks: { position: string; point: string; x: number; y: number }[];
};
type Review = {
  submission: { id: string; club: string; clips: { id: string }[] };
  marking: Marking[];
  evidence: { first: string | null; causes: { name: string }[] }[];
  reply: { words: string; version: number } | null;
};

/** A left-hander's swing, marked without a mouse; a tab that dies in the middle; another coach who wrote meanwhile. */
describe('marking a swing', () => {
  const { url, demo } = inject('service');
  const academy = demo.academies[0];
  const truth = clipTruth('left-hander-hang-back');
  const person = (role: string) => {
    const found = academy?.people.find((one) => one.role === role);
    if (!found) throw new Error(`The demo academy has no ${role}.`);
    return found;
  };
  const student = { email: `isolde.${Date.now()}@students.example`, password: 'a long enough word' };
  const complaints: string[] = [];
  let browser: Browser;
  let coach: BrowserContext;
  let other: BrowserContext;
  let page: Page;
  let id = '';

  const ask = async (by: BrowserContext, method: string, path: string, data?: object, version?: number) => {
    const headers: Record<string, string> = { origin: url, 'idempotency-key': crypto.randomUUID() };
    if (version !== undefined) headers['if-match'] = `"${version}"`;
    return by.request.fetch(`${url}${path}`, { method, headers, ...(data && { data }) });
  };
  const claimBy = async (by: BrowserContext, what: 'claim' | 'release') =>
    expect((await ask(by, 'POST', `/api/submissions/${id}/${what}`)).status()).toBe(200);
  const reviewNow = async (): Promise<Review> =>
    (await ask(coach, 'GET', `/api/submissions/${id}/review`)).json();

  beforeAll(async () => {
    browser = await openBrowser();
    const golfer = await openContext(browser, phone, complaints);
    const joined = await ask(golfer, 'POST', `/api/join/${academy?.slug}`, {
      ...student,
      ...{ name: 'Isolde Marrowby', hand: 'left', ageGroup: 'adult', zone: 'Europe/London', guardian: null },
    });
    expect(joined.status()).toBe(201);
    await golfer.clearCookies();
    const onPhone = await golfer.newPage();
    await signIn(onPhone, url, student);
    await onPhone.goto(`${url}/send`);
    await onPhone.getByLabel('Choose the video').setInputFiles(clipFile('left-hander-hang-back'));
    await onPhone.getByRole('button', { name: 'Go on', exact: true }).click();
    for (let tap = 0; tap < 5; tap += 1) await onPhone.getByRole('button', { name: /^Ground first/ }).click();
    await onPhone.getByRole('button', { name: 'Go on', exact: true }).click();
    await onPhone.getByLabel('No, or no more than usual').check();
    await onPhone.getByRole('button', { name: 'Send to my coach' }).click();
    await onPhone.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
    const sent = await (await ask(golfer, 'GET', '/api/submissions')).json();
    id = sent.items[0].id;
    await golfer.close();

    coach = await openContext(browser, desk, complaints);
    other = await openContext(browser, desk, complaints);
    page = await coach.newPage();
    await signIn(page, url, person('coach'));
    await signIn(await other.newPage(), url, person('manager'));
  });
  afterAll(() => browser.close());

  /** Presses a key so many times. */
  const press = async (key: string, times = 1) => {
    for (let count = 0; count < times; count += 1) await page.keyboard.press(key);
  };
  const stepTo = async (frame: number) => {
    await press('Home');
    await press('Shift+ArrowRight', Math.floor(frame / 10));
    await press('ArrowRight', frame % 10);
    await page.getByText(`Frame ${frame + 1} of ${truth.frames}`).waitFor();
    await page.locator(`canvas[data-drawn="${frame}"]`).first().waitFor();
  };
  const stage = () => page.getByRole('button', { name: /^Stage/ });
  /** Where the cross of the aim lies, in pixels of the picture. */
  const aimed = () =>
    stage().evaluate((button) => {
      const crosses = button.parentElement?.querySelectorAll<SVGPathElement>(
        'svg[role=img] g[data-mark] path',
      );
      const box = crosses?.item(crosses.length - 1)?.getBBox();
      if (box === undefined) throw new Error('Nothing is aimed at.');
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    });
  const moveBy = async (by: number, keys: readonly [string, string]) => {
    const [key, count] = [by < 0 ? keys[0] : keys[1], Math.abs(Math.round(by))];
    await press(`Shift+${key}`, Math.floor(count / 10));
    await press(key, count % 10);
  };
  const placeByKeys = async ([position, point]: (typeof fatMarks)[number], placed: number) => {
    const [x, y] = truth.points[position]?.[point] ?? [0, 0];
    const from = await aimed();
    await moveBy(x - from.x, ['ArrowLeft', 'ArrowRight']);
    await moveBy(y - from.y, ['ArrowUp', 'ArrowDown']);
    await press('Enter');
    await page.getByText(`${placed} of 12 marks`).waitFor();
  };
  const markByKeys = async (from: number, to: number) => {
    let at: string | null = null;
    for (const [index, mark] of fatMarks.entries()) {
      if (index < from || index >= to) continue;
      if (mark[0] !== at) {
        await stepTo(truth.positions[mark[0]] ?? 0);
        await press('a');
      }
      at = mark[0];
      await placeByKeys(mark, index + 1);
    }
  };
  const openAgain = async () => {
    page = await coach.newPage();
    await page.goto(`${url}/review/${id}`);
    await page.getByText(`of ${truth.frames}`).first().waitFor();
  };

  it('is claimed and half marked by keys alone; a tab that dies loses nothing, stored or not', async () => {
    await openAgain();
    const claim = page.getByRole('button', { name: 'Claim this swing' });
    await claim.focus();
    await press('Enter');
    await page.getByText('You have this swing.').waitFor();
    await seeOrder(page);
    await page.getByText('Nothing is marked or seen yet').waitFor();
    // Nothing reaches the service from here on.
    await coach.route('**/marks', (route) =>
      route.request().method() === 'PUT' ? route.abort('connectionreset') : route.continue(),
    );
    await markByKeys(0, 6);
    await page.getByText('Not saved yet').waitFor();
    await page.close();
    await coach.unroute('**/marks');
    expect((await reviewNow()).marking[0]?.marks).toEqual([]);

    await openAgain();
    await page.getByText('6 of 12 marks').waitFor();
    await page.getByText('were found on this device and are back').waitFor();
    await page.getByText('Saved', { exact: false }).first().waitFor();
    await vi.waitFor(async () => expect((await reviewNow()).marking[0]?.marks).toHaveLength(6), 30_000);
  });

  it('carries what stands still to the next moment, hollow; every mark lies within a pixel of the truth', async () => {
    await markByKeys(6, 8);
    const hollow = stage().locator('xpath=..').locator('svg[role=img] g[data-mark]:has(circle)');
    expect(await hollow.evaluateAll((all) => all.map((one) => one.getAttribute('data-mark')).sort())).toEqual(
      [...['Ball', 'Lead ankle', 'Trail ankle']],
    );
    await markByKeys(8, 12);
    await page.getByText('All marks of the first pass are placed').waitFor();
    await vi.waitFor(async () => expect((await reviewNow()).marking[0]?.marks).toHaveLength(12), 30_000);
    for (const { position, point, x, y } of (await reviewNow()).marking[0]?.marks ?? []) {
      const [trueX, trueY] = truth.points[position]?.[point] ?? [0, 0];
      expect(Math.hypot(x - trueX, y - trueY), `${point} at ${position}`).toBeLessThan(1);
    }
  });

  it('says the planted cause on the spot, the same as the service', async () => {
    const causes = page.getByRole('region', { name: 'Causes, the likeliest first' });
    expect(await causes.getByRole('heading', { level: 3 }).first().textContent()).toMatch(/^Hang-back/);
    expect((await reviewNow()).evidence[0]).toMatchObject({ first: 'hang-back' });
    await expectAccessible(page);
    await keepPictures(page, 'review-marked');
  });

  it('moves, takes away, undoes and redoes the last mark by keys', async () => {
    const last = async () =>
      (await reviewNow()).marking[0]?.marks.find(({ position }) => position === 'finish') ?? null;
    const before = await last();
    const becomes = (wanted: object | null) =>
      vi.waitFor(
        async () =>
          wanted === null ? expect(await last()).toBeNull() : expect(await last()).toMatchObject(wanted),
        10_000,
      );
    await press('Alt+ArrowRight');
    await press('Alt+Shift+ArrowDown');
    const moved = { x: (before?.x ?? 0) + 1, y: (before?.y ?? 0) + 10 };
    await becomes(moved);
    await press('z');
    await press('z');
    await becomes({ x: before?.x, y: before?.y });
    await press('x');
    await becomes(null);
    await press('z');
    await becomes({ x: before?.x, y: before?.y });
    await press('Z');
    await becomes(null);
    await press('z');
    await becomes({ x: before?.x, y: before?.y });
  });

  it('comes closer to eight times and back, and shows its lines or hides them', async () => {
    await press('+', 3);
    await page.getByText('8 ×', { exact: true }).waitFor();
    await keepPictures(page, 'review-closer');
    await press('0');
    await page.getByText('1 ×', { exact: true }).waitFor();
    const lines = page.locator('[data-line="ball-line"]');
    expect(await lines.count()).toBe(1);
    await press('g');
    await vi.waitFor(async () => expect(await lines.count()).toBe(0), 30_000);
    await press('g');
  });

  it('keeps both texts of two coaches until one of them has chosen', async () => {
    await coach.route('**/reply', (route) =>
      route.request().method() === 'PUT' ? route.abort('connectionreset') : route.continue(),
    );
    await page.getByLabel('Words to the student').fill('Mine: let the hips go first.');
    await page.getByText('Not saved yet').first().waitFor();
    // The claim lapses; somebody else takes the swing, changes a mark and the text, and gives it back.
    await claimBy(coach, 'release');
    await claimBy(other, 'claim');
    const now = await reviewNow();
    const marking = now.marking[0];
    const theirs = (marking?.marks ?? []).map((mark) =>
      mark.point === 'ball' ? { ...mark, x: mark.x + 5 } : mark,
    );
    const marksAt = `/api/submissions/${id}/clips/${marking?.clipId}/marks`;
    const marked = await ask(other, 'PUT', marksAt, { marks: theirs, observations: [] }, marking?.version);
    expect(marked.status()).toBe(200);
    const text = {
      words: 'Theirs: wait for the weight.',
      cause: null,
      setUpTicks: [],
      frames: [],
      plan: null,
    };
    const at = `/api/submissions/${id}/reply`;
    expect((await ask(other, 'PUT', at, text, now.reply?.version ?? 0)).status()).toBe(200);
    await claimBy(other, 'release');
    await claimBy(coach, 'claim');

    await coach.unroute('**/reply');
    await page.getByRole('button', { name: 'Save the draft' }).click();
    const both = page.getByRole('alert').filter({ hasText: 'Somebody else saved another text' });
    await both.getByText('Theirs: wait for the weight.').waitFor();
    await both.getByText('Mine: let the hips go first.').waitFor();
    expect((await reviewNow()).reply?.words).toBe('Theirs: wait for the weight.');
    await expectAccessible(page);
    await keepPictures(page, 'review-two-texts');
    await both.getByRole('button', { name: 'Mine, then theirs' }).click();
    await vi.waitFor(
      async () =>
        expect((await reviewNow()).reply?.words).toBe(
          'Mine: let the hips go first.\n\nTheirs: wait for the weight.',
        ),
      10_000,
    );

    // Their ball and a mark that was moved here are joined: different marks, nothing to choose.
    await page.getByRole('button', { name: 'Hip-middle, Finish: placed' }).focus();
    await press('Enter');
    await press('ArrowLeft');
    await page.getByText('Theirs and yours are joined').waitFor();
    const joined = (await reviewNow()).marking[0]?.marks ?? [];
    const of = (marks: Marking['marks'], point: string) => marks.find((mark) => mark.point === point);
    expect(of(joined, 'ball')).toEqual(of(theirs, 'ball'));
  });

  it('is put right by one key, and says so where a miss is better read from behind', async () => {
    await press('e');
    const dialog = page.getByRole('dialog', { name: 'Put right how it was filmed' });
    await dialog.getByLabel('Club').selectOption({ label: '8-iron' });
    await vi.waitFor(async () => expect((await reviewNow()).submission.club).toBe('8-iron'), 30_000);
    await expectAccessible(page);
    await keepPictures(page, 'review-put-right');
    await press('Escape');
    await page.getByLabel('Read for').selectOption({ label: 'Slice' });
    await page.getByText('This miss is read better').waitFor();
    await keepPictures(page, 'review-other-view');
    await page.getByRole('button', { name: 'Ask to film again from there' }).click();
    expect(await page.getByLabel('Wrong angle').isChecked()).toBe(true);
  });

  it('no page complained on the way', () => {
    expect(complaints).toEqual([]);
  });
});
