import { fileURLToPath } from 'node:url';

/** How to run the child that opens video: the bundle beside this one, or the source by way of tsx. */
export const mediaChildEntry = (): { entryPath: string; nodeArguments?: readonly string[] } => {
  const here = import.meta.url;
  if (here.endsWith('.ts')) {
    return {
      entryPath: fileURLToPath(new URL('./media-child.ts', here)),
      nodeArguments: ['--import', 'tsx'],
    };
  }
  return { entryPath: fileURLToPath(new URL('./media-child.mjs', here)) };
};
