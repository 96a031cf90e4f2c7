/** Where the files of a clip lie. Built from ids of the database only, never from a request as it came. */
type Of = { readonly academyId: string; readonly clipId: string };

const folder = ({ academyId, clipId }: Of): string => `${academyId}/clips/${clipId}`;

/** As it was uploaded; removed after preparing. */
export const originalKey = (of: Of): string => `${folder(of)}/original`;
export const renditionKey = (of: Of): string => `${folder(of)}/rendition.mp4`;
export const posterKey = (of: Of): string => `${folder(of)}/poster.jpg`;
/** Times of the rendition's frames in seconds, JSON. */
export const framesKey = (of: Of): string => `${folder(of)}/frames.json`;

/** The files a browser may ask for, by the last part of their address. */
export const mediaFiles = {
  'rendition.mp4': { key: renditionKey, type: 'video/mp4' },
  'poster.jpg': { key: posterKey, type: 'image/jpeg' },
  'frames.json': { key: framesKey, type: 'application/json' },
} as const;
export type MediaFile = keyof typeof mediaFiles;

/** The address of a media file; every request for it is checked again. */
export const mediaPath = (clipId: string, file: MediaFile): string => `/media/clips/${clipId}/${file}`;
