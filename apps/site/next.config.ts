import { join } from 'node:path';
import type { NextConfig } from 'next';

const ours = ['calendar', 'contracts', 'diagnosis', 'library', 'numbers', 'practice', 'progress', 'swing'];

const config: NextConfig = {
  transpilePackages: ours.map((name) => `@ballfirst/${name}`),
  turbopack: { root: join(import.meta.dirname, '..', '..') },
  poweredByHeader: false,
  // The door passes compressed pages on as they are: each byte is compressed once, where it is made.
  compress: true,
};

export default config;
