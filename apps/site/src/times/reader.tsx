'use client';
import { createContext, type ReactNode, useContext } from 'react';

type Reader = { readonly zone: string; readonly renderedAt: string };

const ReaderContext = createContext<Reader>({ zone: 'UTC', renderedAt: '1970-01-01T00:00:00.000Z' });

export const useReader = (): Reader => useContext(ReaderContext);

/** Gives the islands the academy's zone and the instant the page was made, so that both renderings agree. */
export function ReaderProvider({ zone, renderedAt, children }: Reader & { children: ReactNode }) {
  return <ReaderContext value={{ zone, renderedAt }}>{children}</ReaderContext>;
}
