// The pictures of the README, taken from the demo academy as anybody sees it after `npm start`.
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { desk, openBrowser, phone, signIn } from '../journeys/browser.ts';
import { clipTruth, fatMarks } from '../journeys/kept-swing.ts';
import { historyTold, runningService, type Service, startService } from '../journeys/service.ts';

const folder = fileURLToPath(new URL('../../docs/pictures/', import.meta.url));
const say = (line: string): void => console.log(line);

/** A palette of 128 colours: these are screens, not photographs. */
const keep = async (page: Page, name: string, widthPx: number): Promise<void> => {
  const file = path.join(folder, `${name}.png`);
  await sharp(await page.screenshot())
    .resize({ width: widthPx })
    .png({ palette: true, colours: 128, effort: 10 })
    .toFile(file);
  say(`  ${path.relative(process.cwd(), file)}`);
};

type Person = Service['demo']['academies'][number]['people'][number];

const peopleOf = (service: Service, role: string): Person[] =>
  service.demo.academies[0]?.people.filter((it) => it.role === role) ?? [];

const openAs = async (
  browser: Browser,
  service: Service,
  role: string,
  screen: object,
  person = peopleOf(service, role)[0],
): Promise<Page> => {
  if (person === undefined) throw new Error(`The demo academy has no ${role}.`);
  const context = await browser.newContext({
    ...screen,
    ...{ timezoneId: 'Europe/London', locale: 'en-GB', reducedMotion: 'reduce', colorScheme: 'light' },
  });
  const page = await context.newPage();
  await signIn(page, service.url, person);
  return page;
};

/** The first student of the demo who has a reply to read. */
const openReader = async (browser: Browser, service: Service, screen: object) => {
  for (const person of peopleOf(service, 'student')) {
    const page = await openAs(browser, service, 'student', screen, person);
    const home = await page.request.get(`${service.url}/api/home`);
    const [reply] = ((await home.json()) as { replies: { id: string }[] }).replies;
    if (reply !== undefined) return { page, replyId: reply.id };
    await page.context().close();
  }
  throw new Error('No student of the demo who signs in has a reply.');
};

type Waiting = { items: { id: string; kind: string; pain?: string }[] };
type Opened = {
  heldBack: boolean;
  submission: { id: string; clips: { id: string; picture: { frames: number } | null }[] };
};

/** A fat swing of the demo, claimed, with the first pass placed where the golfer truly was. */
const markedReview = async (page: Page, url: string): Promise<string> => {
  const truth = clipTruth('hang-back');
  const headers = { origin: url };
  const read = async <T>(at: string): Promise<T> => (await page.request.get(`${url}${at}`)).json();
  const waiting = await read<Waiting>('/api/inbox?limit=50&fault=fat');
  for (const { id, pain } of waiting.items) {
    if (pain !== 'none') continue;
    const { heldBack, submission } = await read<Opened>(`/api/submissions/${id}/review`);
    const [clip] = submission.clips;
    if (heldBack || clip?.picture?.frames !== truth.frames) continue;
    const claim = await page.request.post(`${url}/api/submissions/${id}/claim`, {
      headers: { ...headers, 'idempotency-key': crypto.randomUUID() },
    });
    if (!claim.ok()) continue;
    const marks = fatMarks.map(([position, point]) => {
      const [x, y] = truth.points[position]?.[point] ?? [0, 0];
      return { position, point, frame: truth.positions[position] ?? 0, x, y, source: 'coach' };
    });
    await page.request.put(`${url}/api/submissions/${id}/clips/${clip.id}/marks`, {
      headers: { ...headers, 'if-match': '"0"' },
      data: { marks, observations: [] },
    });
    return id;
  }
  throw new Error('No fat swing waits in the demo.');
};

const take = async (service: Service, browser: Browser): Promise<void> => {
  const { url } = service;
  const coach = await openAs(browser, service, 'coach', { viewport: { width: 1440, height: 1150 } });
  await coach.goto(`${url}/inbox`);
  await coach.getByRole('main').getByRole('listitem').first().waitFor();
  await coach.waitForLoadState('networkidle');
  await keep(coach, 'inbox', 1100);

  const id = await markedReview(coach, url);
  await coach.setViewportSize({ width: 1440, height: 1400 });
  await coach.goto(`${url}/review/${id}`);
  await coach
    .getByRole('region', { name: 'Causes, the likeliest first' })
    .getByRole('listitem')
    .first()
    .waitFor();
  await coach
    .getByRole('slider', { name: 'Frame' })
    .fill(String(clipTruth('hang-back').positions.impact ?? 0));
  await coach.locator(`canvas[data-drawn="${clipTruth('hang-back').positions.impact ?? 0}"]`).waitFor();
  await coach.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    window.scrollTo(0, 0);
  });
  await coach.waitForLoadState('networkidle');
  await keep(coach, 'review', 1100);

  const manager = await openAs(browser, service, 'manager', {
    ...desk,
    viewport: { width: 1440, height: 1150 },
  });
  await manager.goto(`${url}/trials`);
  await manager.waitForLoadState('networkidle');
  await keep(manager, 'trials', 1100);

  const small = { ...phone, viewport: { width: 360, height: 750 } };
  const student = await openAs(browser, service, 'student', small);
  await student.goto(`${url}/send`);
  await student.waitForLoadState('networkidle');
  await keep(student, 'send-phone', 400);
  const { page: reader, replyId } = await openReader(browser, service, small);
  await reader.goto(`${url}/replies/${replyId}`);
  await reader.getByRole('heading', { level: 1 }).waitFor();
  await reader.waitForLoadState('networkidle');
  await keep(reader, 'reply-phone', 400);
};

// PICTURES_HOME names the data folder of a service that runs already, while the pictures are worked on.
const running = process.env.PICTURES_HOME;
say(running ? 'the service that runs' : 'starting the service in a folder of its own');
const service = running ? await runningService(running) : await startService();
try {
  say("waiting for the demo's past");
  await historyTold(service.home);
  const browser = await openBrowser();
  try {
    await take(service, browser);
  } finally {
    await browser.close();
  }
} finally {
  await service.stop();
}
