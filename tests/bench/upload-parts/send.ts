import { Agent, type IncomingMessage, request } from 'node:http';

const agent = new Agent({ keepAlive: true, maxSockets: 64 });

type Ask = { readonly method: string; readonly url: string; readonly headers: Record<string, string> };

/** One request with a body given piece by piece; the answer's body is read away. */
export function ask({ method, url, headers }: Ask, pieces: Iterable<Buffer> = []): Promise<IncomingMessage> {
  return new Promise((resolve, reject) => {
    const sent = request(url, { method, headers, agent }, (answer) => {
      answer
        .resume()
        .on('end', () => resolve(answer))
        .on('error', reject);
    });
    sent.on('error', reject);
    const rest = pieces[Symbol.iterator]();
    const more = (): void => {
      for (let next = rest.next(); ; next = rest.next()) {
        if (next.done) return void sent.end();
        if (!sent.write(next.value)) return void sent.once('drain', more);
      }
    };
    more();
  });
}

const text = (words: string): string => Buffer.from(words).toString('base64');
const metadata = `filename ${text('swing.mp4')},view ${text('face-on')},swingLength ${text('full')}`;

/** Makes room for a file. @returns the address of the upload */
export async function create(address: string, cookie: string, bytes: number): Promise<string> {
  const headers = {
    cookie,
    'tus-resumable': '1.0.0',
    'upload-length': `${bytes}`,
    'upload-metadata': metadata,
  };
  const answer = await ask({ method: 'POST', url: `${address}/uploads`, headers });
  if (answer.statusCode !== 201) throw new Error(`The upload was refused with ${answer.statusCode}.`);
  return answer.headers.location ?? '';
}

/** Sends one chunk. @returns the offset the door acknowledged */
export async function patch(url: string, cookie: string, offset: number, chunk: Buffer): Promise<number> {
  const headers = {
    ...{ cookie, 'tus-resumable': '1.0.0', 'upload-offset': `${offset}` },
    ...{ 'content-type': 'application/offset+octet-stream', 'content-length': `${chunk.length}` },
  };
  const answer = await ask({ method: 'PATCH', url, headers }, piecesOf(chunk));
  if (answer.statusCode !== 204) throw new Error(`A chunk was answered with ${answer.statusCode}.`);
  return Number(answer.headers['upload-offset']);
}

export async function offsetOf(url: string, cookie: string): Promise<number> {
  const answer = await ask({ method: 'HEAD', url, headers: { cookie, 'tus-resumable': '1.0.0' } });
  if (answer.statusCode !== 200) throw new Error(`The offset was answered with ${answer.statusCode}.`);
  return Number(answer.headers['upload-offset']);
}

const pieceBytes = 256 * 1024;

export function* piecesOf(chunk: Buffer): Iterable<Buffer> {
  for (let at = 0; at < chunk.length; at += pieceBytes) yield chunk.subarray(at, at + pieceBytes);
}
