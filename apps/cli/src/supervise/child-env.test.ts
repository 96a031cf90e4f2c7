import { expect, it } from 'vitest';
import { childEnv } from './child-env.ts';

it('passes on what is ours, without the addresses of the starter and what npm added', () => {
  const ours = {
    PATH: '/bin',
    SMTP_URL: 'smtp://mail',
    DATABASE_OWNER_URL: 'postgresql://owner',
    DATABASE_URL: 'postgresql://app',
    npm_lifecycle_event: 'start',
    NODE_ENV: 'development',
    UNSET: undefined,
  };
  expect(childEnv(ours, { PORT: '4600' })).toEqual({
    PATH: '/bin',
    SMTP_URL: 'smtp://mail',
    NODE_ENV: 'production',
    NEXT_TELEMETRY_DISABLED: '1',
    PORT: '4600',
  });
});
