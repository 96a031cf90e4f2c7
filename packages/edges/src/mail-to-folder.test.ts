import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Letter } from '@ballfirst/services/ports';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { letterFileName, mailToFolder } from './mail-to-folder.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-mail-'));
});
afterAll(() => rm(folder, { recursive: true }));

const letter: Letter = {
  to: { name: 'Zoë Example', address: 'zoe@example.test' },
  from: { name: 'Low Point Academy', address: 'lessons@example.test' },
  subject: 'Time to brush the grass — ten swings',
  text: 'Ten swings.\nStop if it hurts.',
  html: '<p>Ten swings.</p>',
  messageId: '<check-in.0190@ballfirst.example.test>',
  date: new Date('2026-03-29T07:00:00Z'),
};

it('writes a letter that any mail program opens', async () => {
  await mailToFolder(path.join(folder, 'one')).send(letter);
  const [name = ''] = await readdir(path.join(folder, 'one'));
  const text = await readFile(path.join(folder, 'one', name), 'utf8');
  expect(text).toMatch(/^Message-ID: <check-in\.0190@ballfirst\.example\.test>\r$/m);
  expect(text).toMatch(/^Date: Sun, 29 Mar 2026 07:00:00 \+0000\r$/m);
  expect(text).toContain('zoe@example.test');
  expect(text).toContain('multipart/alternative');
});

it('is one file when sent twice, two for two letters', async () => {
  const mailer = mailToFolder(path.join(folder, 'two'));
  await mailer.send(letter);
  await mailer.send(letter);
  expect(await readdir(path.join(folder, 'two'))).toEqual([letterFileName(letter)]);
  await mailer.send({ ...letter, messageId: '<other@ballfirst.example.test>' });
  expect(await readdir(path.join(folder, 'two'))).toHaveLength(2);
});

it('makes a harmless file name of any message id', () => {
  expect(letterFileName({ messageId: '<../../etc/x@y>' })).toMatch(/^etc-x-y-[0-9a-f]{12}\.eml$/);
});

it('lets nobody smuggle a header in by a subject', async () => {
  const sly = { ...letter, messageId: '<sly@x>', subject: 'Hello\r\nBcc: everyone@example.test' };
  await mailToFolder(path.join(folder, 'sly')).send(sly);
  const text = await readFile(path.join(folder, 'sly', letterFileName(sly)), 'utf8');
  expect(text).not.toMatch(/^Bcc:/m);
});
