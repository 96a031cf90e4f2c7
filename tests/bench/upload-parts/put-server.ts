// The baseline: one streamed PUT into a file, fdatasync before the answer, nothing else.
import { createWriteStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';

const [folder = '.'] = process.argv.slice(2);
const server = createServer(async (request, response) => {
  const path = join(folder, `put${request.url?.replaceAll('/', '-')}`);
  await pipeline(request, createWriteStream(path));
  const file = await open(path, 'r+');
  await file.datasync();
  await file.close();
  response.end();
});
server.listen(0, '127.0.0.1', () => {
  const address = server.address();
  if (typeof address === 'object' && address !== null) console.log(address.port);
});
