import { createServer, type Server, type Socket } from 'node:net';
import type { Letter } from '@ballfirst/services/ports';
import { afterEach, expect, it } from 'vitest';
import { mailBySmtp } from './mail-by-smtp.ts';

const letter: Letter = {
  to: { name: 'Student', address: 'student@example.test' },
  from: { name: 'Academy', address: 'lessons@example.test' },
  subject: 'Your reply is here',
  text: 'Read it.\n.\nA line with one dot stands above.',
  html: '<p>Read it.</p>',
  messageId: '<reply.1@ballfirst.example.test>',
  date: new Date('2026-01-02T03:04:05Z'),
};

type Mailbox = { server: Server; url: string; letters: string[]; sockets: Set<Socket> };
const open: Mailbox[] = [];

/** A server that speaks the little of RFC 5321 a letter needs; `atData` is its answer to DATA. */
const mailServer = async (atData: string, greets = true): Promise<Mailbox> => {
  const letters: string[] = [];
  const sockets = new Set<Socket>();
  const server = createServer((socket) => {
    sockets.add(socket);
    if (greets) socket.write('220 here\r\n');
    let text = '';
    let inData = false;
    socket.on('data', (bytes) => {
      text += bytes.toString('latin1');
      for (;;) {
        const end = text.indexOf(inData ? '\r\n.\r\n' : '\r\n');
        if (end < 0) return;
        const line = text.slice(0, end);
        text = text.slice(end + (inData ? 5 : 2));
        if (inData) {
          letters.push(line);
          inData = false;
          socket.write('250 kept\r\n');
        } else if (line === 'DATA') {
          inData = atData.startsWith('354');
          socket.write(`${atData}\r\n`);
        } else if (line === 'QUIT') socket.end('221 bye\r\n');
        else socket.write('250 fine\r\n');
      }
    });
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('No port.');
  const box = { server, url: `smtp://127.0.0.1:${address.port}`, letters, sockets };
  open.push(box);
  return box;
};

afterEach(() => {
  for (const { server, sockets } of open.splice(0)) {
    for (const socket of sockets) socket.destroy();
    server.close();
  }
});

it('hands a letter to the server, whole', async () => {
  const box = await mailServer('354 go on');
  const mailer = mailBySmtp(box.url);
  await mailer.send(letter);
  mailer.close();
  expect(box.letters).toHaveLength(1);
  expect(box.letters[0]).toContain('Message-ID: <reply.1@ballfirst.example.test>');
  expect(box.letters[0]).toContain('Subject: Your reply is here');
});

it('fails when the server refuses', async () => {
  const box = await mailServer('451 try later');
  await expect(mailBySmtp(box.url).send(letter)).rejects.toMatchObject({ responseCode: 451 });
  expect(box.letters).toHaveLength(0);
});

it('gives up a server that says nothing', async () => {
  const box = await mailServer('354 go on', false);
  await expect(mailBySmtp(box.url, 200).send(letter)).rejects.toMatchObject({ code: 'ETIMEDOUT' });
});
