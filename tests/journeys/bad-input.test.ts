import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile } from './kept-swing.ts';

/** What goes wrong on a range: each time a sentence a golfer understands, and nothing lost. */
describe('a form that meets trouble', () => {
  const { url, demo } = inject('service');
  const slug = demo.academies[2]?.slug ?? '';
  // Somebody who has just joined: another journey may have moved the clock past the demo's trials.
  const student = { email: `piers.${Date.now()}@students.example`, password: 'a long enough word' };
  const complaints: string[] = [];
  let folder = '';
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-bad-'));
    const whole = await readFile(clipFile('sound'));
    await writeFile(
      path.join(folder, 'text.mp4'),
      'This is a shopping list, whatever its name says.\n'.repeat(40),
    );
    await writeFile(path.join(folder, 'cut.mp4'), whole.subarray(0, Math.floor(whole.length * 0.6)));
    browser = await openBrowser();
    context = await openContext(browser, phone, complaints);
    page = await context.newPage();
    const joined = await context.request.post(`${url}/api/join/${slug}`, {
      headers: { origin: url, 'idempotency-key': crypto.randomUUID() },
      data: {
        ...student,
        name: 'Piers Hollowbrook',
        hand: 'right',
        ageGroup: 'adult',
        zone: 'Europe/London',
        guardian: null,
      },
    });
    expect(joined.status()).toBe(201);
    await context.clearCookies();
    await signIn(page, url, student);
  });
  afterAll(async () => {
    await browser.close();
    await rm(folder, { recursive: true, force: true });
  });

  const fill = async (file: string): Promise<void> => {
    await page.getByLabel('Choose the video').setInputFiles(file);
    await page.getByRole('button', { name: 'Go on', exact: true }).click();
    for (let tap = 0; tap < 4; tap += 1) await page.getByRole('button', { name: /^Ground first/ }).click();
    await page.getByRole('button', { name: 'Go on', exact: true }).click();
    await page.getByLabel('A word for your coach').fill('A long word that must not be lost.');
    await page.getByLabel('No, or no more than usual').check();
  };

  it('a session that ends in mid-form loses nothing', async () => {
    await page.goto(`${url}/send`);
    await fill(clipFile('sound'));
    await context.clearCookies();
    await page.getByRole('button', { name: 'Send to my coach' }).click();
    await page.getByText('You are signed out.').first().waitFor();
    await keepPictures(page, 'signed-out-in-mid-form');
    await page.getByRole('link', { name: 'Sign in' }).last().click();
    await page.waitForURL(/\/sign-in/);
    await page.getByLabel('Email').fill(student.email);
    await page.getByLabel('Password').fill(student.password);
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.waitForURL(`${url}/send`);
    expect(await page.getByLabel('A word for your coach').inputValue()).toBe(
      'A long word that must not be lost.',
    );
    await page.getByRole('button', { name: 'Send to my coach' }).click();
    await page.getByRole('heading', { name: 'Sent' }).waitFor();
    await page.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
  });

  it('a text file named .mp4 is refused in words, and another video takes its place', async () => {
    await page.getByRole('button', { name: 'Send another swing' }).click();
    await fill(path.join(folder, 'text.mp4'));
    await page.getByRole('button', { name: 'Send to my coach' }).click();
    await page
      .getByText('This file is not a video, whatever its name says.')
      .first()
      .waitFor({ timeout: 60_000 });
    await expectAccessible(page);
    await keepPictures(page, 'refused');
    await page.getByLabel('Choose another video').setInputFiles(path.join(folder, 'cut.mp4'));
    await page.getByText('The end of this video is missing.').first().waitFor({ timeout: 60_000 });
    await page.getByLabel('Choose another video').setInputFiles(clipFile('sway-away'));
    await page.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
  });

  it('the page complained of nothing', () => {
    expect(complaints).toEqual([]);
  });
});
