import { expect, it } from 'vitest';
import { parsePostmasterPid } from './postmaster-pid.ts';

// A file as PostgreSQL 18.4 wrote it here.
const whole = '10930\n/proc/self/cwd\n1795604269\n55991\n\n127.0.0.1\n  2146422         4\nready   \n';

it('reads process, port and state', () => {
  expect(parsePostmasterPid(whole)).toEqual({ pid: 10930, port: 55991, isReady: true });
});

it('knows a server that is still starting', () => {
  expect(parsePostmasterPid(whole.replace('ready   ', 'starting'))?.isReady).toBe(false);
});

it('knows the short file of the first moment', () => {
  expect(parsePostmasterPid('10930\n/data\n1795604269\n55991\n')).toEqual({
    pid: 10930,
    port: 55991,
    isReady: false,
  });
});

it.each(['', '\n', 'nonsense', '-4\n', '0\n/data', '1.5\n'])('makes nothing of %j', (text) => {
  expect(parsePostmasterPid(text)).toBeUndefined();
});
