import { randomUUID } from 'node:crypto';

type Asked = { body?: unknown; version?: number };

/** Somebody who speaks with the door in HTTP, without a browser: one session, one cookie. */
export type Caller = {
  readonly ask: <T>(method: string, path: string, asked?: Asked) => Promise<T>;
  /** Sends a whole file by tus 1.0 in one piece. @returns the id of the clip */
  readonly upload: (bytes: Buffer, facts: Readonly<Record<string, string>>) => Promise<string>;
};

const tus = { 'tus-resumable': '1.0.0' };

export const callerAt = (url: string): Caller => {
  let cookie = '';
  const send = async (path: string, init: RequestInit & { headers: Record<string, string> }) => {
    const answer = await fetch(new URL(path, url), {
      ...init,
      headers: { origin: url, ...(cookie ? { cookie } : {}), ...init.headers },
    });
    const set = answer.headers.getSetCookie()[0];
    if (set) cookie = set.split(';')[0] ?? '';
    if (!answer.ok) throw new Error(`${init.method} ${path}: ${answer.status} ${await answer.text()}`);
    return answer;
  };
  return {
    async ask<T>(method: string, path: string, { body, version }: Asked = {}) {
      const answer = await send(path, {
        method,
        headers: {
          ...(method === 'POST' ? { 'idempotency-key': randomUUID() } : {}),
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
          ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      return (answer.status === 204 ? undefined : await answer.json()) as T;
    },
    async upload(bytes, facts) {
      const metadata = Object.entries(facts)
        .map(([key, value]) => `${key} ${Buffer.from(value).toString('base64')}`)
        .join(',');
      const made = await send('/uploads', {
        method: 'POST',
        headers: { ...tus, 'upload-length': `${bytes.length}`, 'upload-metadata': metadata },
      });
      const at = new URL(made.headers.get('location') ?? '', url);
      await send(at.pathname, {
        method: 'PATCH',
        headers: { ...tus, 'upload-offset': '0', 'content-type': 'application/offset+octet-stream' },
        body: new Uint8Array(bytes),
      });
      return at.pathname.split('/').at(-1) ?? '';
    },
  };
};
