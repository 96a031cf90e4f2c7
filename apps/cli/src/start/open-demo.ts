import type { DatabaseUrls } from './settings.ts';
export async function openDemo(_: {
  root: string;
  home: unknown;
  url: string;
  database: DatabaseUrls;
  isWanted: boolean;
}): Promise<string[]> {
  return [];
}
