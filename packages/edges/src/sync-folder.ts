import { open } from 'node:fs/promises';

/** Makes names made, changed or removed in a folder survive a loss of power. */
export const syncFolder = async (folder: string): Promise<void> => {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
};
