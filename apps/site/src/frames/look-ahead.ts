import type { PictureCache } from './picture-cache.ts';

/** Enough for a key held down: the next run of a rendition, whose key frames stand ten apart. */
const apart = [1, 10];

/** Has the pictures of the coming steps decoded while somebody looks at this one. */
export const lookAhead = (pictures: PictureCache, frame: number, towards: 1 | -1, frames: number): void => {
  for (const by of apart) {
    const coming = frame + by * towards;
    if (coming >= 0 && coming < frames) pictures.ahead(coming);
  }
};
