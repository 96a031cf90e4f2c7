import { connect, createServer, type Socket } from 'node:net';

/** One request as the wire saw it: how a chunk's bytes were cut. */
export type Carried = { readonly offset: number; readonly bytes: number };

export type CuttingWire = {
  readonly address: string;
  /** Every PATCH: where it began and how many bytes of its body went through. */
  readonly chunks: Carried[];
  cuts: number;
  close(): Promise<void>;
};

/**
 * A wire between client and door that breaks: `next` says after how many bytes of a PATCH's body both ends are cut, null
 * for never. One request at a time runs over a connection, as browsers do.
 */
export const cuttingWire = async (to: string, next: () => number | null): Promise<CuttingWire> => {
  const door = new URL(to);
  const chunks: Carried[] = [];
  const sockets = new Set<Socket>();
  const server = createServer((client) => {
    const upstream = connect(Number(door.port), door.hostname);
    for (const socket of [client, upstream]) {
      sockets.add(socket);
      socket
        .on('error', () => undefined)
        .on('close', () => {
          sockets.delete(socket);
          client.destroy();
          upstream.destroy();
        });
    }
    upstream.pipe(client);
    let left = 0;
    let budget: number | null = null;
    client.on('data', (piece: Buffer) => {
      let body = piece;
      if (left === 0) {
        const end = piece.indexOf('\r\n\r\n') + 4;
        const head = piece.subarray(0, end).toString('latin1');
        const field = (name: string) => Number(new RegExp(`^${name}: (\\d+)`, 'im').exec(head)?.[1] ?? 0);
        upstream.write(piece.subarray(0, end));
        body = piece.subarray(end);
        if (!head.startsWith('PATCH ')) return void upstream.write(body);
        left = field('content-length');
        budget = next();
        chunks.push({ offset: field('upload-offset'), bytes: 0 });
      }
      const through = budget === null ? body : body.subarray(0, budget);
      const chunk = chunks.at(-1);
      if (chunk) chunks[chunks.length - 1] = { ...chunk, bytes: chunk.bytes + through.length };
      left -= body.length;
      if (budget === null) return void upstream.write(through);
      budget -= through.length;
      if (budget > 0 && left > 0) return void upstream.write(through);
      // Cut when the last of these bytes has left, or in the answer to a whole chunk: the client knows of neither.
      wire.cuts += 1;
      client.pause();
      upstream.end(through, () => client.destroy());
    });
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const at = server.address();
  if (at === null || typeof at === 'string') throw new Error('No port.');
  const wire: CuttingWire = {
    address: `http://127.0.0.1:${at.port}`,
    chunks,
    cuts: 0,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        for (const socket of sockets) socket.destroy();
      }),
  };
  return wire;
};
