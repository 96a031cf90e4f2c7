import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile, clipTruth } from './kept-swing.ts';

/** A student on the range looks at a swing just filmed: on the phone, without signal, and nothing is sent. */
describe('looking at a swing on the phone', () => {
  const { url, demo } = inject('service');
  const person = demo.academies[0]?.people.find(({ role }) => role === 'student');
  const truth = clipTruth('hang-back');
  const complaints: string[] = [];
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    context = await openContext(browser, phone, complaints);
    page = await context.newPage();
    if (!person) throw new Error('The demo academy has no student.');
    await signIn(page, url, person);
  });
  afterAll(() => browser.close());

  const picture = async () => Number(await page.locator('[data-picture]').getAttribute('data-picture'));

  it('plays slowly, steps by one picture and moves the line, and no request leaves', async () => {
    await page.goto(`${url}/look`, { waitUntil: 'networkidle' });
    await expectAccessible(page);
    const asked: string[] = [];
    page.on('request', (request) => {
      if (!request.url().startsWith('blob:')) asked.push(`${request.method()} ${request.url()}`);
    });
    await context.setOffline(true);
    await page.getByLabel('Choose one from this phone').setInputFiles(clipFile('hang-back'));
    const video = page.getByLabel('Your swing, on this phone only');
    await expect.poll(() => video.evaluate((it: HTMLVideoElement) => it.readyState)).toBeGreaterThan(1);

    await page.getByRole('button', { name: 'Play' }).click();
    await expect.poll(picture).toBeGreaterThan(3);
    expect(await video.evaluate((it: HTMLVideoElement) => it.playbackRate)).toBe(0.25);
    await page.getByLabel('Eighth').check();
    expect(await video.evaluate((it: HTMLVideoElement) => it.playbackRate)).toBe(0.125);
    await page.getByRole('button', { name: 'Stop' }).click();

    await page.getByLabel('Place in the film').fill('0.51');
    const durationS = await video.evaluate((it: HTMLVideoElement) => it.duration);
    await expect.poll(picture).toBe(Math.floor((0.51 * truth.frames) / durationS));
    const before = await picture();
    await page.getByRole('button', { name: 'One picture on' }).click();
    await expect.poll(picture).toBe(before + 1);
    await page.getByRole('button', { name: 'One picture back' }).click();
    await expect.poll(picture).toBe(before);

    const box = await video.boundingBox();
    if (box === null) throw new Error('The film is not shown.');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.25, box.y + box.height / 2, { steps: 4 });
    await page.mouse.up();
    expect(Number(await page.getByLabel('Ball line').inputValue())).toBeCloseTo(0.25, 1);

    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
    await expectAccessible(page);
    await context.setOffline(false);
    await keepPictures(page, 'look');
  });
});
