import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import type { Service } from '../../journeys/service.ts';

export const launchBrowser = (executablePath: string): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });

type Size = { readonly width: number; readonly height: number };

/** A browser context in which somebody of the first demo academy has signed in, on a screen of this size. */
export const signedIn = async (
  browser: Browser,
  { url, demo }: Service,
  role: string,
  viewport: Size,
): Promise<{ context: BrowserContext; page: Page }> => {
  const person = demo.academies[0]?.people.find((one) => one.role === role);
  if (person === undefined) throw new Error(`The demo has no ${role}.`);
  const context = await browser.newContext({
    ...{ viewport, reducedMotion: 'reduce', locale: 'en-GB', timezoneId: 'Europe/London' },
  });
  const page = await context.newPage();
  await page.goto(`${url}/sign-in`);
  await page.getByLabel('Email').fill(person.email);
  await page.getByLabel('Password').fill(person.password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL((it) => !it.pathname.startsWith('/sign-in'));
  return { context, page };
};
