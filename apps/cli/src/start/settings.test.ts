import { describe, expect, it } from 'vitest';
import { readSettings } from './settings.ts';

describe('readSettings', () => {
  it('has its defaults', () => {
    expect(readSettings({}, [], '/project')).toEqual({
      home: '/project/.data',
      port: 4600,
      database: undefined,
      withDemo: true,
    });
  });

  it('takes folder, port, databases and --empty', () => {
    const env = {
      BALLFIRST_HOME: '/elsewhere',
      PORT: '8080',
      DATABASE_URL: 'postgresql://app@db/x',
      DATABASE_OWNER_URL: 'postgresql://owner@db/x',
      QUEUE_DATABASE_URL: 'postgresql://queue@db/x',
    };
    expect(readSettings(env, ['--empty'], '/project')).toEqual({
      home: '/elsewhere',
      port: 8080,
      database: { app: env.DATABASE_URL, owner: env.DATABASE_OWNER_URL, queue: env.QUEUE_DATABASE_URL },
      withDemo: false,
    });
  });

  it.each(['0', '65536', 'http', '80.5', '-1'])('refuses port %s', (PORT) => {
    expect(() => readSettings({ PORT }, [], '/project')).toThrow(/PORT is/);
  });

  it('refuses half a set of databases', () => {
    expect(() => readSettings({ DATABASE_URL: 'postgresql://app@db/x' }, [], '/p')).toThrow(/go together/);
  });

  it('refuses an argument it does not know', () => {
    expect(() => readSettings({}, ['--emtpy'], '/p')).toThrow(/--emtpy/);
  });
});
