import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { desk, expectAccessible, keepPictures, openBrowser, openContext, phone, signIn } from './browser.ts';
import { clipFile, clipTruth, fatMarks } from './kept-swing.ts';
import { letters, subjectOf } from './letters.ts';
import { seeOrder } from './see-order.ts';
import { moveClock } from './service.ts';

type Evidence = { readings: { key: string; value: number; u: number }[] };

const dayMs = 86_400_000;

/** From the first click of a student to the manager's "paid", in one browser, on the running service. */
describe('a remote lesson', () => {
  const { url, home, demo } = inject('service');
  const academy = demo.academies[0];
  if (!academy) throw new Error('There is no demo academy.');
  const personOf = (role: string) => {
    const found = academy.people.find((person) => person.role === role);
    if (!found) throw new Error(`The demo academy has no ${role}.`);
    return found;
  };
  const complaints: string[] = [];
  const again = process.env.JOURNEY_HOME ? ` ${Date.now().toString(36)}` : '';
  const name = `Thea Brindlecombe${again}`;
  const email = `thea${again.trim()}@students.example`;
  let browser: Browser;
  let student: BrowserContext;
  let coach: BrowserContext;
  let onPhone: Page;
  let atDesk: Page;

  beforeAll(async () => {
    browser = await openBrowser();
    student = await openContext(browser, phone, complaints);
    coach = await openContext(browser, desk, complaints);
    onPhone = await student.newPage();
    atDesk = await coach.newPage();
  });
  afterAll(async () => {
    await browser.close();
    await moveClock(home, 0);
  });

  it('a student joins on a phone', async () => {
    await onPhone.goto(`${url}/join/${academy.slug}`);
    await expectAccessible(onPhone);
    await keepPictures(onPhone, 'join');
    await onPhone.getByLabel('Your name').fill(name);
    await onPhone.getByLabel('Email').fill(email);
    await onPhone.getByLabel('Password').fill('a long enough word');
    await onPhone.getByRole('button', { name: 'Start the trial' }).click();
    await onPhone.waitForURL(`${url}/home`);
    await onPhone.getByText('Nothing is charged unless you join.').waitFor();
    await onPhone.getByText('Day 1 of 14').first().waitFor();
    await expectAccessible(onPhone);
  });

  it('films, taps ten balls, sends; the upload goes on after a cut', async () => {
    await onPhone.goto(`${url}/send`);
    await expectAccessible(onPhone);
    await keepPictures(onPhone, 'send-film');
    let cuts = 0;
    await student.route('**/uploads/*', async (route) => {
      if (route.request().method() === 'PATCH' && cuts < 2) {
        cuts += 1;
        await route.abort('connectionreset');
      } else await route.continue();
    });
    await onPhone.getByLabel('Choose the video').setInputFiles(clipFile('hang-back'));
    await onPhone.getByRole('button', { name: 'Go on', exact: true }).click();

    for (const [button, times] of [
      ['Ground first', 6],
      ['Solid', 3],
      ['Thin', 1],
    ] as const) {
      for (let tap = 0; tap < times; tap += 1)
        await onPhone.getByRole('button', { name: new RegExp(`^${button}\\W+\\d`) }).click();
    }
    await onPhone.getByLabel('Club').selectOption({ label: '8-iron' });
    // More balls than the set has cannot be tapped.
    expect(await onPhone.getByRole('button', { name: /^Ground first/ }).isDisabled()).toBe(true);
    await expectAccessible(onPhone);
    await keepPictures(onPhone, 'send-balls');
    // What was typed survives a reload in mid-form.
    await onPhone.reload();
    await onPhone.getByText('10 balls are tapped').first().waitFor();
    await onPhone.getByRole('button', { name: 'Go on', exact: true }).click();

    await onPhone.getByLabel('A word for your coach').fill('The mat comes first, every second ball.');
    await onPhone.getByLabel('No, or no more than usual').check();
    await expectAccessible(onPhone);
    await keepPictures(onPhone, 'send-say');
    await onPhone.getByRole('button', { name: 'Send to my coach' }).click();
    await onPhone.getByRole('heading', { name: 'Sent' }).waitFor();
    await onPhone.getByText('Your video is ready. It waits for your coach.').waitFor({ timeout: 60_000 });
    expect(cuts).toBe(2);
    await expectAccessible(onPhone);
  });

  it('the inbox shows it with its reasons; pain stands first; a coach claims it', async () => {
    await signIn(atDesk, url, personOf('coach'));
    await atDesk.waitForURL(`${url}/inbox`);
    await atDesk.getByRole('link', { name }).first().waitFor();
    await expectAccessible(atDesk);
    await keepPictures(atDesk, 'inbox');
    const names = await atDesk.getByRole('main').getByRole('listitem').allInnerTexts();
    expect(names[0]).toContain('New pain reported');
    const row = names.find((text) => text.includes(name));
    expect(row).toContain('Fat costs most');
    expect(row).toContain('First swing of this student');
    await atDesk.getByRole('link', { name }).first().click();
    await atDesk.waitForURL(`${url}/review/**`);
    await atDesk.getByRole('button', { name: 'Claim this swing' }).click();
    await atDesk.getByText('You have this swing.').waitFor();
    await seeOrder(atDesk);
  });

  it('the coach steps frames, places twelve marks, and the planted cause comes first', async () => {
    const truth = clipTruth('hang-back');
    const stage = atDesk.getByRole('button', { name: /^Stage/ });
    const slider = atDesk.getByRole('slider', { name: 'Frame' });
    await atDesk.getByText(`Frame 1 of ${truth.frames}`).waitFor();
    await stage.focus();
    await atDesk.keyboard.press('ArrowRight');
    await atDesk.getByText(`Frame 2 of ${truth.frames}`).waitFor();
    await atDesk.keyboard.press('Shift+ArrowRight');
    await atDesk.getByText(`Frame 12 of ${truth.frames}`).waitFor();

    for (const [index, [position, point]] of fatMarks.entries()) {
      const frame = truth.positions[position] ?? 0;
      await slider.fill(String(frame));
      await atDesk.getByText(`Frame ${frame + 1} of ${truth.frames}`).waitFor();
      // A click counts only on a picture that is there to be seen.
      await stage.locator(`canvas[data-drawn="${frame}"]`).waitFor();
      const [x, y] = truth.points[position]?.[point] ?? [0, 0];
      const at = await stage.locator('svg').evaluate(
        (svg, place) => {
          const matrix = (svg as SVGSVGElement).getScreenCTM();
          const seen = new DOMPoint(place.x, place.y).matrixTransform(matrix ?? undefined);
          return { x: seen.x, y: seen.y };
        },
        { x, y },
      );
      await atDesk.mouse.click(at.x, at.y);
      await atDesk.getByText(`${index + 1} of 12 marks`).waitFor();
    }
    await atDesk.getByText('Saved', { exact: true }).waitFor();
    const causes = atDesk.getByRole('region', { name: 'Causes, the likeliest first' });
    await vi.waitFor(
      async () => expect((await causes.getByRole('listitem').allInnerTexts())[0]).toMatch(/^Hang-back/),
      {
        timeout: 30_000,
      },
    );
    expect(await causes.getByRole('listitem').first().textContent()).toMatch(/strong sign/i);
    const measured = atDesk.getByRole('region', { name: 'Measured' });
    expect(await measured.getByRole('listitem').count()).toBeGreaterThanOrEqual(8);
    // What the golfer truly did, by the forward dynamics that drew the clip, is within three doubts of each.
    const review = await atDesk.request.get(
      `${url}/api/submissions/${new URL(atDesk.url()).pathname.split('/').at(-1)}/review`,
    );
    const [evidence] = ((await review.json()) as { evidence: Evidence[] }).evidence;
    const known = (evidence?.readings ?? []).filter(({ key }) => truth.measures[key] !== undefined);
    expect(known.length).toBeGreaterThanOrEqual(8);
    for (const { key, value, u } of known)
      expect(Math.abs(value - (truth.measures[key] ?? Number.NaN)), key).toBeLessThan(3 * u);
    await expectAccessible(atDesk);
    await keepPictures(atDesk, 'review');
  });

  it('the coach chooses the cause, a drill comes with it, and the reply is sent', async () => {
    const causes = atDesk.getByRole('region', { name: 'Causes, the likeliest first' });
    await causes.getByRole('button', { name: 'Choose as the first cause' }).first().click();
    await causes.getByText('Chosen as the first cause').waitFor();
    expect(await atDesk.getByLabel('Drill').inputValue()).not.toBe('');
    expect((await atDesk.getByLabel('Words to the student').inputValue()).length).toBeGreaterThan(40);
    const film = atDesk.getByRole('checkbox', { name: /^The film/ });
    await film.waitFor();
    expect(await film.isChecked()).toBe(false);
    await atDesk.getByRole('button', { name: /^Stage/ }).focus();
    await atDesk.keyboard.press('c');
    await vi.waitFor(async () => expect(await film.isChecked()).toBe(true), 30_000);
    await atDesk.getByRole('button', { name: 'Preview' }).click();
    const preview = atDesk.getByRole('region', { name: 'As the student reads it' });
    await preview.getByRole('region', { name: 'A film about it' }).waitFor();
    await atDesk.getByRole('button', { name: 'Send the reply' }).click();
    await atDesk.getByRole('button', { name: 'Take it back' }).click();
    await atDesk.getByRole('button', { name: 'Send the reply' }).click();
    await atDesk.getByRole('button', { name: 'Take it back' }).waitFor();
    // The half minute for second thoughts goes by.
    await moveClock(home, 60_000);
    await atDesk.getByText('This swing has been answered.').first().waitFor();
  });

  it('the student reads it, with cautions, and logs practice until a step is passed', async () => {
    await vi.waitFor(
      async () =>
        expect((await letters(home)).some((it) => it.includes(`To: ${name}`) || it.includes(email))).toBe(
          true,
        ),
      {
        timeout: 20_000,
        interval: 250,
      },
    );
    await onPhone.goto(`${url}/home`);
    await onPhone.getByRole('link', { name: 'Read the reply' }).first().click();
    await onPhone.waitForURL(`${url}/replies/**`);
    await onPhone.getByRole('heading', { level: 1 }).waitFor();
    // A right-hander reads left and right, never lead and trail.
    const read = await onPhone.getByRole('main').textContent();
    expect(read).toMatch(/\bleft\b/);
    expect(read).not.toMatch(/\b(lead|trail)\b/);
    expect(read).toMatch(/Stop if anything hurts/);
    await expectAccessible(onPhone);
    const film = onPhone.getByRole('region', { name: 'A film about it' }).getByRole('link');
    expect(await film.getAttribute('href')).toMatch(/^https:\/\//);
    await keepPictures(onPhone, 'reply');
    await onPhone.getByRole('button', { name: 'I’ve read this' }).click();
    await onPhone.getByText('You told your coach that you have read it').waitFor();
    await onPhone.reload();
    await onPhone.getByText('You told your coach that you have read it').waitFor();
    expect(await onPhone.getByRole('button', { name: 'I’ve read this' }).count()).toBe(0);

    await onPhone.goto(`${url}/home`);
    await logPractice(onPhone, 7);
    await onPhone.getByText('Step passed').first().waitFor();
    await onPhone.reload();
    await logPractice(onPhone, 2);
    await onPhone.getByText('Stay on this step').first().waitFor();
    await expectAccessible(onPhone);
    await keepPictures(onPhone, 'home');
  });

  it('the check-in comes by mail at eight in the morning of the student', async () => {
    await moveClock(home, 8 * dayMs);
    const checkIn = await vi.waitFor(
      async () => {
        const found = (await letters(home)).find((it) => it.includes(email) && /film/i.test(subjectOf(it)));
        expect(found).toBeDefined();
        return found ?? '';
      },
      { timeout: 30_000, interval: 250 },
    );
    expect(checkIn).toMatch(/hurts|pain/i);
    await moveClock(home, 0);
  });

  it('the manager sees the trial and sets the student to paid', async () => {
    const page = await (await openContext(browser, desk, complaints)).newPage();
    await signIn(page, url, personOf('manager'));
    await page.goto(`${url}/trials`);
    await page.getByText(name).first().waitFor();
    await expectAccessible(page);
    await keepPictures(page, 'trials');
    await page.getByRole('button', { name: `Set to paid: ${name}` }).click();
    await page.getByRole('button', { name: 'Yes, set to paid' }).click();
    await page.getByText(`${name} is now paid.`).waitFor();
    await page.goto(`${url}/students?standing=paid`);
    await page.getByRole('link', { name }).click();
    await page.waitForURL(`${url}/students/**`);
    const history = await page.getByRole('main').textContent();
    expect(history).toContain('On trial to paid');
    expect(history).toContain('read it, and said so');
    await expectAccessible(page);
    await keepPictures(page, 'student');
    await page.goto(`${url}/students`);
    await expectAccessible(page);
    await keepPictures(page, 'students');
    await page.goto(`${url}/mail`);
    await page.getByText(name).first().waitFor();
    await expectAccessible(page);
    await keepPictures(page, 'mail');
  });

  it('no page complained on the way', () => {
    expect(complaints).toEqual([]);
  });
});

const logPractice = async (page: Page, clean: number): Promise<void> => {
  const log = page.getByRole('region', { name: 'Log practice' });
  const tap = (question: string, answer: string) =>
    log.getByRole('group', { name: question }).getByText(answer, { exact: true }).click();
  await tap('How many were clean?', String(clean));
  await tap('Did anything hurt?', 'No');
  await log.getByRole('button', { name: 'Log it' }).click();
};
