import { expect, it } from 'vitest';
import { readEnv } from './env.ts';

const least = {
  PORT: '4100',
  SITE_URL: 'http://127.0.0.1:4101/',
  DATABASE_URL: 'postgresql://app@127.0.0.1/x',
  MEDIA_FOLDER: '/m',
  MAIL_FOLDER: '/l',
  PUBLIC_URL: 'http://127.0.0.1:4100',
};

it('needs little, and listens on this machine only unless told otherwise', () => {
  expect(readEnv(least)).toMatchObject({
    host: '127.0.0.1',
    port: 4100,
    siteUrl: 'http://127.0.0.1:4101',
    cookieSecure: false,
    publicIsThisMachine: true,
    trustedProxies: [],
    watchStdin: false,
  });
});

it('has a secure cookie where people come by https', () => {
  const env = readEnv({ ...least, PUBLIC_URL: 'https://lessons.example.test/' });
  expect(env).toMatchObject({
    cookieSecure: true,
    publicIsThisMachine: false,
    publicUrl: 'https://lessons.example.test',
  });
});

it('names every variable that is wrong', () => {
  expect(() => readEnv({ ...least, PORT: 'x', SITE_URL: 'ftp://a', MAIL_FOLDER: undefined })).toThrow(
    /PORT: .*SITE_URL: .*MAIL_FOLDER: /,
  );
});
