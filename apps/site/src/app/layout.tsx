import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { readMe } from '../http/read-me.ts';
import '../look/tokens.css';
import '../look/paper.css';
import '../look/controls.css';
import { Top } from '../shell/top.tsx';
import { ReaderProvider } from '../times/reader.tsx';
import { shellWords } from '../words/shell.ts';

// Every page carries the nonce of its own request: nothing is made ahead of time.
export const dynamic = 'force-dynamic';

export const metadata: Metadata = {
  title: { default: shellWords.product, template: `%s · ${shellWords.product}` },
  description: shellWords.tagline,
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f6f7f4' },
    { media: '(prefers-color-scheme: dark)', color: '#121a16' },
  ],
};

export default async function Layout({ children }: { children: ReactNode }) {
  const me = await readMe();
  return (
    <html lang="en">
      <body>
        <a href="#content" className="skip">
          {shellWords.skip}
        </a>
        <ReaderProvider zone={me?.academy?.zone ?? 'UTC'} renderedAt={new Date().toISOString()}>
          <Top me={me} />
          {children}
        </ReaderProvider>
      </body>
    </html>
  );
}
