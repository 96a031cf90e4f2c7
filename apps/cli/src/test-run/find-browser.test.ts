import { expect, it } from 'vitest';
import { findBrowser } from './find-browser.ts';

const only = (path: string) => (candidate: string) => candidate === path;

it('takes the named one, or none at all when that is missing', () => {
  const env = { CHROME_PATH: '/opt/browser', PATH: '/usr/bin' };
  expect(findBrowser(env, only('/opt/browser'))).toBe('/opt/browser');
  expect(findBrowser(env, only('/usr/bin/chromium'))).toBeUndefined();
});

it('searches the path', () => {
  const env = { PATH: '/usr/local/bin::/usr/bin' };
  expect(findBrowser(env, only('/usr/bin/google-chrome'))).toBe('/usr/bin/google-chrome');
  expect(findBrowser({}, only('/usr/bin/chromium'))).toBeUndefined();
});
