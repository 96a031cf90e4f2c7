import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { desk, expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile, clipTruth, fatMarks } from './kept-swing.ts';

type Mark = { position: string; point: string; frame: number; x: number; y: number };
type Review = { marking: { marks: Mark[] }[] };
type Talk = {
  talkThrough: { track: { frame: number; point: unknown }[]; durationMs: number; sound: string } | null;
};

/** The desk by mouse alone: marks, a second swing beside the first, and a voice that goes with the reply. */
describe('the desk', () => {
  const { url, demo } = inject('service');
  const academy = demo.academies[0];
  const truth = clipTruth('hang-back');
  const student = { email: `leander.${Date.now()}@students.example`, password: 'a long enough word' };
  const complaints: string[] = [];
  let browser: Browser;
  let golfer: BrowserContext;
  let coach: BrowserContext;
  let page: Page;
  let first = '';
  let second = '';

  const ask = async (by: BrowserContext, method: string, path: string, data?: object) => {
    const headers = { origin: url, 'idempotency-key': crypto.randomUUID() };
    return by.request.fetch(`${url}${path}`, { method, headers, ...(data && { data }) });
  };
  const review = async (id: string): Promise<Review> =>
    (await ask(coach, 'GET', `/api/submissions/${id}/review`)).json();
  const talk = async (): Promise<Talk> =>
    (await ask(coach, 'GET', `/api/submissions/${second}/talk-through`)).json();

  type Photo = { name: string; mimeType: string; buffer: Buffer };
  const send = async (clip: string, photo: Photo, said: string): Promise<string> => {
    // A phone of its own each time: the last swing's page is still open on the other.
    const another = await openContext(browser, phone, complaints);
    const at = await another.newPage();
    await signIn(at, url, student);
    await at.goto(`${url}/send`);
    await at.getByLabel('Choose the video').setInputFiles(clipFile(clip));
    await at.getByText('A photo of your grip as well').click();
    await at.getByLabel('Take or choose the photo').setInputFiles(photo);
    await at.getByLabel('Choose another photo').waitFor({ state: 'attached' });
    await at.getByRole('button', { name: 'Go on', exact: true }).click();
    for (let tap = 0; tap < 5; tap += 1) await at.getByRole('button', { name: /^Ground first/ }).click();
    await at.getByRole('button', { name: 'Go on', exact: true }).click();
    await at.getByLabel('No, or no more than usual').check();
    await at.getByRole('button', { name: 'Send to my coach' }).click();
    await at.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
    await at.getByText(said).waitFor({ timeout: 30_000 });
    const sent = await (await ask(another, 'GET', '/api/submissions')).json();
    await another.close();
    return sent.items[0].id;
  };

  beforeAll(async () => {
    browser = await openBrowser();
    golfer = await openContext(browser, phone, complaints);
    const joined = await ask(golfer, 'POST', `/api/join/${academy?.slug}`, {
      ...student,
      ...{
        name: 'Leander Coppermoor',
        hand: 'right',
        ageGroup: 'adult',
        zone: 'Europe/London',
        guardian: null,
      },
    });
    expect(joined.status()).toBe(201);
    await golfer.clearCookies();
    await signIn(await golfer.newPage(), url, student);
    const hands = { name: 'hands.jpg', mimeType: 'image/jpeg' };
    const words = { ...hands, buffer: Buffer.from('Dear coach, these are my hands.') };
    const still = readFileSync(clipFile('hang-back').replace('.mp4', '.jpg'));
    first = await send('hang-back', words, 'This file is not a photo');
    second = await send(
      'hang-back',
      { ...hands, buffer: still },
      'The photo of your grip is with your coach.',
    );
    coach = await openContext(browser, desk, complaints);
    page = await coach.newPage();
    const person = academy?.people.find(({ role }) => role === 'coach');
    if (person === undefined) throw new Error('The demo academy has no coach.');
    await signIn(page, url, person);
  });
  afterAll(() => browser.close());

  const open = async (id: string) => {
    await page.goto(`${url}/review/${id}`);
    await page.locator('canvas[data-drawn]').first().waitFor();
    await page.getByRole('button', { name: 'Claim this swing' }).click();
    await page.getByText('You have this swing.').waitFor();
  };
  const stage = () => page.getByRole('button', { name: /^Stage/ });
  /** A point of the picture on the screen, by the drawing that lies over it. */
  const onScreen = (x: number, y: number) =>
    stage().evaluate(
      (button, at) => {
        const svg = button.parentElement?.querySelector<SVGSVGElement>('svg[role=img]');
        const matrix = svg?.getScreenCTM();
        if (!matrix) throw new Error('There is no stage.');
        const { x: left, y: top } = new DOMPoint(at.x, at.y).matrixTransform(matrix);
        return { x: left, y: top };
      },
      { x, y },
    );
  /** Steps by the buttons under the stage. */
  const stepTo = async (frame: number) => {
    const where = await page
      .getByText(/^Frame \d+ of \d+, /)
      .first()
      .textContent();
    let now = Number(/^Frame (\d+)/.exec(where ?? '')?.[1] ?? 1) - 1;
    while (now !== frame) {
      const by = Math.abs(frame - now) >= 10 ? 10 : 1;
      const back = frame < now;
      const name = back
        ? by === 10
          ? 'Ten frames back'
          : 'One frame back'
        : by === 10
          ? 'Ten frames on'
          : 'One frame on';
      await page.getByRole('button', { name }).click();
      now += back ? -by : by;
    }
    await page.locator(`canvas[data-drawn="${frame}"]`).first().waitFor();
  };

  it('marks a swing by mouse alone, every mark within two pixels of the screen', async () => {
    await open(first);
    for (const [index, [position, point]] of fatMarks.entries()) {
      await stepTo(truth.positions[position] ?? 0);
      const [x, y] = truth.points[position]?.[point] ?? [0, 0];
      const at = await onScreen(x, y);
      await page.mouse.click(at.x, at.y);
      await page.getByText(`${index + 1} of 12 marks`).waitFor();
    }
    await page.getByText('All marks of the first pass are placed').waitFor();
    await vi.waitFor(async () => expect((await review(first)).marking[0]?.marks).toHaveLength(12), 30_000);
    const scale = (await onScreen(1, 0)).x - (await onScreen(0, 0)).x;
    for (const { position, point, frame, x, y } of (await review(first)).marking[0]?.marks ?? []) {
      const [trueX, trueY] = truth.points[position]?.[point] ?? [0, 0];
      expect(Math.hypot(x - trueX, y - trueY) * scale, `${point} at ${position}`).toBeLessThan(2);
      expect(frame).toBe(truth.positions[position]);
    }
  });

  it('finds the doubt of one’s own hand by marking twice, and stores none of it unasked', async () => {
    const before = (await review(first)).marking[0]?.marks;
    await page.getByRole('button', { name: 'Mark twice: how sure is my hand?' }).click();
    for (const [index, [position, point]] of fatMarks.slice(0, 4).entries()) {
      const [x, y] = truth.points[position]?.[point] ?? [0, 0];
      await page.getByText(`Place: `).first().waitFor();
      await page.getByRole('button', { name: new RegExp(`^${words[point]}, Address: not placed`) }).click();
      await page.locator(`canvas[data-drawn="${truth.positions[position]}"]`).first().waitFor();
      const at = await onScreen(x + 8, y);
      await page.mouse.click(at.x, at.y);
      await page.getByText(`Once more without seeing the first: ${index + 1} of 12`).waitFor();
    }
    await page.getByText('By 4 marks one click of yours is').waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Keep the first' }).click();
    expect((await review(first)).marking[0]?.marks).toEqual(before);
    await page.getByRole('button', { name: 'Give it back' }).click();
  });

  it('suggests the points of the last swing, hollow until they are confirmed', async () => {
    await open(second);
    await stepTo(truth.positions.address ?? 0);
    const [x, y] = truth.points.address?.ball ?? [0, 0];
    const at = await onScreen(x, y);
    await page.mouse.click(at.x, at.y);
    await page.getByText('1 of 12 marks').waitFor();
    const hollow = stage().locator('xpath=..').locator('svg[role=img] g[data-mark]:has(circle)');
    await vi.waitFor(async () => expect(await hollow.count()).toBe(5), 30_000);
    // Only the one that was placed is stored: a hollow point is nobody's mark yet.
    await vi.waitFor(
      async () => expect((await review(second)).marking[0]?.marks ?? []).toHaveLength(1),
      10_000,
    );
    await page.getByRole('button', { name: 'Confirm it' }).click();
    await page.getByText('2 of 12 marks').waitFor();
    await keepPictures(page, 'review-suggested');
  });

  it('shows the last swing beside it, tied at the moments that both have, stepping together', async () => {
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
    await page.getByText(/^Tied at address/).waitFor();
    const beside = page.locator('[data-mirror] canvas');
    await vi.waitFor(
      async () => expect(await beside.getAttribute('data-drawn')).toBe(String(truth.positions.address)),
      10_000,
    );
    await page.getByRole('button', { name: 'Ten frames on' }).click();
    const further = String((truth.positions.address ?? 0) + 10);
    await vi.waitFor(async () => expect(await beside.getAttribute('data-drawn')).toBe(further), 30_000);
    await page.getByRole('button', { name: 'Other one frame on' }).click();
    const moved = String((truth.positions.address ?? 0) + 11);
    await vi.waitFor(async () => expect(await beside.getAttribute('data-drawn')).toBe(moved), 30_000);
    await expectAccessible(page);
    await keepPictures(page, 'review-compare');
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
  });

  it('shows the photo of the hands beside the stage, and whole', async () => {
    const small = page.getByRole('img', { name: /hands on the grip/ });
    await small.first().waitFor();
    await page.getByRole('button', { name: 'See it whole' }).click();
    const whole = page.getByRole('dialog', { name: /hands on the grip/ });
    await whole.getByRole('img').waitFor();
    await expectAccessible(page);
    const address = (await small.first().getAttribute('src')) ?? '';
    expect(address).toMatch(/^\/media\/clips\/.+\/photo\.jpg$/);
    const stranger = await openContext(browser, phone, complaints);
    expect((await ask(stranger, 'GET', address)).status()).toBe(401);
    await stranger.close();
    await whole.getByRole('button', { name: 'Close' }).click();
  });

  it('records a voice while stepping and pointing, captions it, and sends it with the reply', async () => {
    await page.getByRole('button', { name: 'Record a talk-through' }).click();
    await page.getByText(/^Recording 0:0/).waitFor();
    // The button stands under the stage: whoever points looks at the picture again.
    await stage().scrollIntoViewIfNeeded();
    const box = await stage().boundingBox();
    if (box === null) throw new Error('There is no stage.');
    for (let step = 0; step < 6; step += 1) {
      await page.mouse.move(box.x + box.width / 2 + step * 5, box.y + box.height / 2);
      await page.keyboard.press('ArrowRight');
      await page.locator('[data-pointing]').first().waitFor();
    }
    await page.getByText('Recording 0:02').waitFor();
    await page.getByRole('button', { name: 'Stop and keep it' }).click();
    await page.getByText('goes with the reply').waitFor();
    // Pointing placed nothing.
    await page.getByText('2 of 12 marks').waitFor();
    const { talkThrough } = await talk();
    const frames = new Set(talkThrough?.track.map(({ frame }) => frame));
    expect(frames.size).toBeGreaterThan(2);
    expect(talkThrough?.track.some(({ point }) => point !== null)).toBe(true);
    await page.getByText('Captions', { exact: true }).click();
    await page
      .getByLabel(/^What you say, a line a sentence/)
      .fill('0:00 Look at the ball.\n0:01 Then the hips.');
    await page.getByRole('button', { name: 'Keep the captions' }).click();
    await page.getByText('Captions kept').waitFor();
    await expectAccessible(page);
    await keepPictures(page, 'review-talk');
    // Recorded, it goes with the reply unless the coach says otherwise.
    expect(await page.getByRole('checkbox', { name: /^Your talk-through/ }).isChecked()).toBe(true);
    await page.getByLabel('Words to the student').fill('Listen to this first.');
    await page.getByRole('button', { name: 'Send the reply' }).click();
    await page.getByText('On its way').waitFor();
  });

  it('is replayed on the student’s own clip', async () => {
    const answered = async () => {
      const { replyId } = await (await ask(golfer, 'GET', `/api/submissions/${second}`)).json();
      expect(replyId).not.toBeNull();
      return String(replyId);
    };
    const replyId = await vi.waitFor(answered, { timeout: 60_000, interval: 1_000 });
    const at = await golfer.newPage();
    await at.goto(`${url}/replies/${replyId}`);
    await at.getByRole('button', { name: /^Hear it: 0:0/ }).click();
    const picture = at.getByRole('img', { name: /^Your swing, frame/ });
    await picture.waitFor();
    await at.getByRole('button', { name: 'Play', exact: true }).click();
    await at.getByText('Then the hips.').waitFor();
    await expectAccessible(at);
    await keepPictures(at, 'reply-talk');
    const { talkThrough } = await talk();
    const sound = talkThrough?.sound ?? '';
    expect((await ask(golfer, 'GET', sound)).status()).toBe(200);
    const stranger = await openContext(browser, phone, complaints);
    expect((await ask(stranger, 'GET', sound)).status()).toBe(401);
    await stranger.close();
  });

  it('says so when a rendition cannot be loaded', async () => {
    await coach.route('**/rendition.mp4', (route) => route.abort('connectionreset'));
    await page.goto(`${url}/review/${first}`);
    await page.getByRole('alert').filter({ hasText: 'The clip did not load.' }).waitFor({ timeout: 30_000 });
    await coach.unroute('**/rendition.mp4');
  });

  it('no page complained on the way', () => {
    expect(complaints).toEqual([]);
  });
});

/** The points of the address as the buttons of the pass call them. */
const words: Readonly<Record<string, string>> = {
  ball: 'Ball',
  'lead-ankle': 'Lead ankle',
  'trail-ankle': 'Trail ankle',
  'hip-middle': 'Hip-middle',
};
