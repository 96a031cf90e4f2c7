import { type IncomingMessage, Agent as PlainAgent, request as plainRequest } from 'node:http';
import { request as secureRequest, Agent as TlsAgent } from 'node:https';
import { type Readable, Stream } from 'node:stream';
import { text } from 'node:stream/consumers';
import { setTimeout as pause } from 'node:timers/promises';
import { AwsV4Signer } from 'aws4fetch';
import type { S3Address } from './s3-address.ts';

export type S3Request = {
  readonly method: 'GET' | 'HEAD' | 'PUT' | 'DELETE';
  readonly key: string;
  readonly headers?: Readonly<Record<string, string>>;
  /** Made anew for every try; absent: no body. */
  readonly body?: {
    readonly bytes: () => Readable | Uint8Array;
    readonly length: number;
    readonly sha256: string;
  };
};

/** What a store may say of its own trouble: worth another try. */
const passing = new Set([500, 502, 503, 504]);
const tries = 3;
const idleMs = 30_000;
const emptySha256 = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';

const agents = { 'http:': new PlainAgent({ keepAlive: true }), 'https:': new TlsAgent({ keepAlive: true }) };

/**
 * Sends one signed request (AWS Signature Version 4, path style) and gives the answer with its body unread. Tries three
 * times when the store is away or says so itself; every request here may be repeated.
 *
 * @throws Error when the store cannot be reached or stays silent for 30 s
 */
export const sendToS3 = async (at: S3Address, it: S3Request): Promise<IncomingMessage> => {
  for (let left = tries - 1; ; left -= 1) {
    try {
      const answer = await sendOnce(at, it);
      if (left === 0 || !passing.has(answer.statusCode ?? 0)) return answer;
      // With its connection: a body may still be on its way to a store that has said no.
      answer.destroy();
    } catch (error) {
      if (left === 0) throw error;
    }
    await pause(100 * 4 ** (tries - 1 - left));
  }
};

const sendOnce = async (at: S3Address, it: S3Request): Promise<IncomingMessage> => {
  const signed = await new AwsV4Signer({
    method: it.method,
    url: `${at.bucketUrl}/${it.key}`,
    headers: { ...it.headers, 'x-amz-content-sha256': it.body?.sha256 ?? emptySha256 },
    accessKeyId: at.accessKeyId,
    secretAccessKey: at.secretAccessKey,
    region: at.region,
    service: 's3',
  }).sign();
  const headers: Record<string, string> = Object.fromEntries(signed.headers);
  if (it.method === 'PUT') headers['content-length'] = String(it.body?.length ?? 0);
  const { protocol } = signed.url;
  const send = protocol === 'https:' ? secureRequest : plainRequest;
  const agent = protocol === 'https:' ? agents['https:'] : agents['http:'];
  return new Promise((answered, failed) => {
    const request = send(signed.url, { method: it.method, headers, agent, timeout: idleMs }, answered);
    request.on('error', failed);
    request.on('timeout', () => request.destroy(new Error('The media store stayed silent for 30 s.')));
    const bytes = it.body?.bytes();
    if (!(bytes instanceof Stream)) return void request.end(bytes);
    bytes.on('error', (error) => request.destroy(error));
    request.on('close', () => bytes.destroy());
    bytes.pipe(request);
  });
};

/** Reads an answer that says no into an error with the store's own code, or with `ENOENT` where there is no such key. */
export const refusedByS3 = async (answer: IncomingMessage, what: string): Promise<Error> => {
  const said = (await text(answer)).slice(0, 2000);
  const code = /<Code>(\w{1,60})<\/Code>/.exec(said)?.[1] ?? 'no reason given';
  const error = new Error(`The media store did not ${what}: ${answer.statusCode} ${code}.`);
  return answer.statusCode === 404 ? Object.assign(error, { code: 'ENOENT' }) : error;
};
