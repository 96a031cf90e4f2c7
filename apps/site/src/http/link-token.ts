'use client';
import { useEffect, useState } from 'react';

/**
 * The token of a mailed link: it stands behind the `#`, which no server and no log ever sees, and is taken out of the
 * address at once. Undefined until the page has looked, null where there is none.
 */
export const useLinkToken = (): string | null | undefined => {
  const [token, setToken] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    const found = /^#([A-Za-z0-9_-]{43})$/.exec(window.location.hash)?.[1] ?? null;
    setToken((kept) => kept ?? found);
    if (found !== null) window.history.replaceState(window.history.state, '', window.location.pathname);
  }, []);
  return token;
};
