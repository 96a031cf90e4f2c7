import { createHash, randomUUID } from 'node:crypto';
import { mkdir, open, rename } from 'node:fs/promises';
import path from 'node:path';
import type { Letter, Mailer } from '@ballfirst/services/ports';
import { createTransport } from 'nodemailer';
import { mailMessage } from './mail-message.ts';
import { syncFolder } from './sync-folder.ts';

/** The name of a letter's file: the same letter sent twice is one file. */
export const letterFileName = (letter: Pick<Letter, 'messageId'>): string => {
  const words = letter.messageId.replace(/[^A-Za-z0-9.-]+/g, '-').replace(/^[.-]+|[.-]+$/g, '');
  const sum = createHash('sha256').update(letter.messageId).digest('hex').slice(0, 12);
  return `${words.slice(0, 80)}-${sum}.eml`;
};

/** Mail as files (RFC 5322) in a folder, for a service without a mail server. Durable when `send` returns. */
export const mailToFolder = (folder: string): Mailer => {
  const transport = createTransport({ streamTransport: true, buffer: true, newline: 'windows' });
  return {
    send: async (letter) => {
      const { message } = await transport.sendMail(mailMessage(letter));
      if (!Buffer.isBuffer(message)) throw new TypeError('A letter must come as bytes.');
      await mkdir(folder, { recursive: true });
      const target = path.join(folder, letterFileName(letter));
      const draft = `${target}.${randomUUID()}.draft`;
      const file = await open(draft, 'w', 0o600);
      try {
        await file.writeFile(message);
        await file.sync();
      } finally {
        await file.close();
      }
      await rename(draft, target);
      await syncFolder(folder);
    },
  };
};
