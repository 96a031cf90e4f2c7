import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';

type Files = Readonly<Record<string, { readonly type: string; readonly bytes: Buffer }>>;

/** Serves a few files with Range, as the door serves media. */
export async function serve(files: Files): Promise<{ url: string; server: Server }> {
  const server = createServer((request, answer) => {
    const file = files[request.url ?? ''];
    if (file === undefined) {
      answer.writeHead(404).end();
      return;
    }
    const { bytes, type } = file;
    const asked = /^bytes=(\d+)-(\d*)$/.exec(request.headers.range ?? '');
    const headers = { 'content-type': type, 'accept-ranges': 'bytes' };
    if (asked === null) {
      answer.writeHead(200, { ...headers, 'content-length': bytes.length }).end(bytes);
      return;
    }
    const from = Number(asked[1]);
    const to = Math.min(bytes.length - 1, asked[2] ? Number(asked[2]) : bytes.length - 1);
    const part = bytes.subarray(from, to + 1);
    const range = { 'content-range': `bytes ${from}-${to}/${bytes.length}`, 'content-length': part.length };
    answer.writeHead(206, { ...headers, ...range }).end(part);
  }).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('There is no free port.');
  return { url: `http://127.0.0.1:${address.port}`, server };
}

export const file = (type: string, path: string) => ({ type, bytes: readFileSync(path) });
