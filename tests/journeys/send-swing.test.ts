import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { desk, expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile } from './kept-swing.ts';

const run = Date.now().toString(36);
const password = 'a long enough word';

/** A junior on a range: refused until the guardian has agreed, then sent over a signal that breaks off twice. */
describe('sending a swing from the range', () => {
  const { url, home, demo } = inject('service');
  const slug = demo.academies[2]?.slug ?? '';
  const junior = { email: `wren.${run}@students.example`, password };
  const guardian = `guardian.${run}@students.example`;
  const complaints: string[] = [];
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    context = await openContext(browser, phone, complaints);
    page = await context.newPage();
  });
  afterAll(() => browser.close());

  const letterTo = async (email: string): Promise<string | undefined> => {
    const folder = path.join(home, 'mail');
    const files = (await readdir(folder)).filter((file) => file.endsWith('.eml'));
    const letters = await Promise.all(files.map((file) => readFile(path.join(folder, file), 'utf8')));
    return letters.find((it) => it.includes(email));
  };
  const onwards = () => page.getByRole('button', { name: 'Go on', exact: true }).click();

  it('a junior joins without the guardian beside, and is told what comes first', async () => {
    await page.goto(`${url}/join/${slug}`);
    await page.getByLabel('Your name').fill('Wren Tallowfield');
    await page.getByLabel('Email', { exact: true }).fill(junior.email);
    await page.getByLabel('Password').fill(password);
    await page.getByLabel('Junior, under 18').check();
    await page.getByLabel("Guardian's name").fill('Hester Tallowfield');
    await page.getByLabel('Relation, for example mother').fill('mother');
    await page.getByLabel("Guardian's email").fill(guardian);
    await page.getByLabel('Not here').check();
    await expectAccessible(page);
    await keepPictures(page, 'join-junior');
    await page.getByRole('button', { name: 'Start the trial' }).click();
    await page.waitForURL(`${url}/home`);
    await page.getByRole('heading', { name: 'Your guardian agrees first' }).waitFor();
    await page.getByRole('link', { name: 'Ask my guardian' }).click();
    await page.getByText('We have written to Hester Tallowfield').waitFor();
    expect(await page.locator('input[type=file]').count()).toBe(0);
    await expectAccessible(page);
    await keepPictures(page, 'consent-first');
  });

  it('no video is taken before the guardian agrees, by whatever way', async () => {
    const refused = await context.request.post(`${url}/uploads`, {
      headers: {
        origin: url,
        'tus-resumable': '1.0.0',
        'upload-length': '1000',
        'upload-metadata': `filename ${btoa('a.mp4')},filetype ${btoa('video/mp4')},view ${btoa('face-on')},swingLength ${btoa('full')}`,
      },
    });
    expect(refused.status()).toBe(403);
    expect(await refused.json()).toMatchObject({ code: 'consent-missing' });
  });

  it('the guardian reads, agrees, withdraws and agrees again by the link of the letter', async () => {
    const letter = await vi.waitFor(
      async () => {
        const found = await letterTo(guardian);
        expect(found).toBeDefined();
        return found ?? '';
      },
      { timeout: 30_000, interval: 250 },
    );
    const whole = letter.replaceAll('=\r\n', '').replaceAll('=\n', '').replaceAll('=3D', '=');
    const link = /https?:\/\/\S+\/consent\/[a-z0-9-]+#[\w-]{43}/.exec(whole)?.[0] ?? '';
    const other = await (await openContext(browser, desk, complaints)).newPage();
    await other.goto(new URL(new URL(link).pathname + new URL(link).hash, url).href);
    await other.getByText('Wren Tallowfield would like to send videos').waitFor();
    // The link leaves the address at once: nobody reads it over a shoulder or in the history.
    expect(other.url()).not.toContain('#');
    await expectAccessible(other);
    await keepPictures(other, 'consent');
    await other.getByLabel('Coaches of the academy may look').check();
    await other.getByRole('button', { name: 'I am the guardian and I agree' }).click();
    await other.getByText('You have agreed.').waitFor();
    await other.getByRole('button', { name: 'Withdraw my consent' }).click();
    await other.getByRole('button', { name: 'Yes, withdraw it' }).click();
    await other.getByText('You have withdrawn your consent.').waitFor();
    await other.getByRole('button', { name: 'I am the guardian and I agree' }).click();
    await other.getByText('You have agreed.').waitFor();
    await expectAccessible(other);
    await other.context().close();
  });

  it('films: the video goes up at once, though the signal breaks off twice', async () => {
    await page.goto(`${url}/home`);
    await page.getByRole('link', { name: 'Send a swing' }).first().click();
    await page.getByRole('img', { name: /Seen from above: the phone stands opposite/ }).waitFor();
    await page.getByText('an adult is there while you film').waitFor();
    await expectAccessible(page);
    let cuts = 0;
    await context.route('**/uploads/*', async (route) => {
      if (route.request().method() === 'PATCH' && cuts < 2) {
        cuts += 1;
        await route.abort('connectionreset');
      } else await route.continue();
    });
    await page.getByLabel('Choose the video').setInputFiles(clipFile('hang-back'));
    await onwards();
    await page.getByText('Uploaded.').waitFor({ timeout: 60_000 });
    expect(cuts).toBe(2);
    await keepPictures(page, 'send-balls-empty');
  });

  it('asks for the view from behind only where the miss shows there', async () => {
    const behind = page.getByRole('heading', { name: 'One more view helps with this miss' });
    for (let tap = 0; tap < 4; tap += 1) await page.getByRole('button', { name: /^Ground first/ }).click();
    expect(await behind.count()).toBe(0);
    const curve = page.getByRole('group', { name: 'and curve' });
    await curve.getByLabel('Right').check();
    await behind.waitFor();
    await page.getByRole('img', { name: /the phone stands behind your hands/ }).waitFor();
    await expectAccessible(page);
    await keepPictures(page, 'send-behind');
    await curve.getByLabel("Can't see").check();
    expect(await behind.count()).toBe(0);
  });

  it('everything typed outlives a reload in mid-form', async () => {
    await page.getByLabel('Club').selectOption({ label: '9-iron' });
    await page.getByLabel('The ball lies on').selectOption({ label: 'Rough' });
    await page.getByRole('radio', { name: 'From memory' }).check();
    await onwards();
    await page.getByLabel('A word for your coach').fill('My weight stays behind.');
    await page.getByLabel('Yes, something new').check();
    await page.getByText('Please stop practising now.').waitFor();
    await page.getByLabel('Where and when?').fill('The left wrist, after ten balls.');
    await expectAccessible(page);
    await keepPictures(page, 'send-pain');
    await page.reload();
    await page.getByText('Please stop practising now.').waitFor();
    expect(await page.getByLabel('A word for your coach').inputValue()).toBe('My weight stays behind.');
    expect(await page.getByLabel('Where and when?').inputValue()).toBe('The left wrist, after ten balls.');
    await page.getByText('Uploaded.').waitFor();
    await page.getByRole('button', { name: 'Back' }).click();
    expect(await page.getByLabel('Club').inputValue()).toBe('9-iron');
    expect(await page.getByRole('radio', { name: 'From memory' }).isChecked()).toBe(true);
    await page.getByText('4 of 10 tapped').waitFor();
    await onwards();
    await page.getByLabel('No, or no more than usual').check();
    await page.getByRole('button', { name: 'Send to my coach' }).click();
    await page.getByRole('heading', { name: 'Sent' }).waitFor();
    await page.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
  });

  it('the club is put right after sending, and how one practises is kept', async () => {
    await page.getByRole('button', { name: 'Change what I said' }).click();
    const right = page.getByRole('region', { name: 'Put something right' });
    expect(await right.getByRole('button', { name: 'Save what I put right' }).isDisabled()).toBe(true);
    await right.getByLabel('Club').selectOption({ label: '8-iron' });
    await right.getByRole('button', { name: /^Thin/ }).click();
    await expectAccessible(page);
    await keepPictures(page, 'put-right');
    await right.getByRole('button', { name: 'Save what I put right' }).click();
    await page.getByText('Put right. Your coach sees it like this now.').waitFor();
    const means = page.getByRole('region', { name: 'So that your drill fits' });
    await means.getByLabel('Days a week you can practise').selectOption({ label: 'Three days' });
    await means.getByLabel('On a mat').check();
    await means.getByRole('button', { name: 'Keep this' }).click();
    await page.getByText('Kept. Your coach sees it with your swing.').waitFor();
    await page.goto(`${url}/home`);
    await page.getByText('4 ground first, 1 thin, 5 not said of 10, from memory').waitFor();
    await page.getByRole('link', { name: 'Put something right: swing with the 8-iron' }).waitFor();
    const { items } = (await (await context.request.get(`${url}/api/submissions`)).json()) as {
      items: { club: string; lie: string; note: string }[];
    };
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({ club: '8-iron', lie: 'rough', note: 'My weight stays behind.' });
  });

  it('a junior signs in again and finds the form ready', async () => {
    await context.clearCookies();
    await signIn(page, url, junior);
    await page.goto(`${url}/send`);
    await page.getByRole('heading', { name: 'Sent' }).waitFor();
    await page.getByRole('button', { name: 'Send another swing' }).click();
    await page.getByRole('heading', { name: 'Film it' }).waitFor();
    await keepPictures(page, 'send-film');
  });

  it('no page complained on the way', () => {
    expect(complaints).toEqual([]);
  });
});
