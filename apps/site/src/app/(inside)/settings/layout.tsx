import type { ReactNode } from 'react';
import { requireRole } from '../../../http/read-me.ts';
import { SettingsParts } from './_components/parts.tsx';

/** Asked before anything is shown, so that a stranger is sent to the sign-in and not to a page on its way. */
export default async function Layout({ children }: { children: ReactNode }) {
  await requireRole('/settings', ['manager']);
  return (
    <>
      <SettingsParts />
      {children}
    </>
  );
}
