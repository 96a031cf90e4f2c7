import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { withAcademy } from '@ballfirst/db/with-academy';
import { originalKey } from '@ballfirst/services/clips/keys';
import { createAcademy, createMembership, createStudent } from '@ballfirst/testing/factories';
import type { TestDatabase } from '@ballfirst/testing/test-database';
import { cookieOf } from './cookie-of.ts';
import type { Door } from './open-door.ts';

const base64 = (text: string): string => Buffer.from(text).toString('base64');
export const swingFacts = { filename: 'swing.mp4', view: 'face-on', swingLength: 'full' };
const metadata = Object.entries(swingFacts)
  .map(([name, value]) => `${name} ${base64(value)}`)
  .join(',');
export const sumOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** One student who sends videos to whichever door is named, and a look at the disk and the row behind it. */
export const uploadWorld = async (database: TestDatabase, door: Door, folder: string) => {
  const { id: academyId } = await createAcademy(database.db);
  const member = await createMembership(database.db, { academyId, role: 'student', name: 'A student' });
  await createStudent(database.db, { academyId, membershipId: member.id });
  const cookie = await cookieOf(door, member);
  const headers = { cookie, 'tus-resumable': '1.0.0' };
  const clipIdOf = (at: string): string => at.split('/').at(-1) ?? '';
  return {
    academyId,
    cookie,
    clipIdOf,
    create: async (address: string, length: number): Promise<string> => {
      const answer = await fetch(`${address}/uploads`, {
        method: 'POST',
        headers: { ...headers, 'upload-length': `${length}`, 'upload-metadata': metadata },
      });
      return answer.headers.get('location') ?? `refused with ${answer.status}`;
    },
    patch: (url: string, offset: number, body: ReadableStream<Uint8Array> | Uint8Array) =>
      fetch(url, {
        method: 'PATCH',
        headers: {
          ...headers,
          'upload-offset': `${offset}`,
          'content-type': 'application/offset+octet-stream',
        },
        body: body instanceof Uint8Array ? Buffer.from(body) : body,
        ...{ duplex: 'half' },
      }),
    offsetOf: async (url: string): Promise<number> => {
      const answer = await fetch(url, { method: 'HEAD', headers });
      return answer.status === 200 ? Number(answer.headers.get('upload-offset')) : Number.NaN;
    },
    drop: (url: string) => fetch(url, { method: 'DELETE', headers }),
    bytesOf: (at: string): Promise<Buffer> =>
      readFile(path.join(folder, originalKey({ academyId, clipId: clipIdOf(at) }))),
    statusOf: async (at: string): Promise<string | undefined> => {
      const id = clipIdOf(at);
      const row = await withAcademy(database.db, academyId, (tx) => tx.clip.findFirst({ where: { id } }));
      return row?.status;
    },
  };
};
