import type { ReactNode } from 'react';
import { requireRole } from '../../../http/read-me.ts';
import { SettingsParts } from '../settings/_components/parts.tsx';

/** Coaches may read what their choices came to; to a manager it is one of the settings. */
export default async function Layout({ children }: { children: ReactNode }) {
  const { role } = await requireRole('/learning', ['coach', 'manager']);
  return (
    <>
      {role === 'manager' && <SettingsParts />}
      {children}
    </>
  );
}
