import { expect, it } from 'vitest';
import { statusByClips } from './settle-submission.ts';

const of = (...statuses: string[]) => statusByClips(statuses.map((status) => ({ status })));

it('is what the worst of its clips makes it', () => {
  expect(of('ready', 'ready')).toBe('waiting');
  expect(of('ready', 'preparing')).toBe('preparing');
  expect(of('uploading')).toBe('preparing');
  expect(of('uploaded', 'refused')).toBe('needs-clip');
  expect(of('ready', 'expired')).toBe('needs-clip');
  expect(of()).toBe('needs-clip');
});
