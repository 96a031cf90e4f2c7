/** Where the files of a clip lie. Built from ids of the database only, never from a request as it came. */
type Of = { readonly academyId: string; readonly clipId: string };

const folder = ({ academyId, clipId }: Of): string => `${academyId}/clips/${clipId}`;

/** As it was uploaded; removed after preparing. */
export const originalKey = (of: Of): string => `${folder(of)}/original`;
export const renditionKey = (of: Of): string => `${folder(of)}/rendition.mp4`;
export const posterKey = (of: Of): string => `${folder(of)}/poster.jpg`;
/** Times of the rendition's frames in seconds, JSON. */
export const framesKey = (of: Of): string => `${folder(of)}/frames.json`;
/** Small pictures of the swing side by side. */
export const stripKey = (of: Of): string => `${folder(of)}/strip.jpg`;

/** What was made of a photo of the grip. */
export const photoKey = (of: Of): string => `${folder(of)}/photo.jpg`;

/** Everything that may lie there of a clip or a photo. */
export const clipKeys = (of: Of): readonly string[] =>
  [originalKey, renditionKey, posterKey, framesKey, stripKey, photoKey].map((key) => key(of));
/** The sound of a talk-through on this clip: it goes when the folder of the clip goes. */
export const talkKey = (of: Of, talkId: string): string => `${folder(of)}/talk-${talkId}`;

/** The files a browser may ask for, by the last part of their address. */
export const mediaFiles = {
  'rendition.mp4': { key: renditionKey, type: 'video/mp4' },
  'poster.jpg': { key: posterKey, type: 'image/jpeg' },
  'strip.jpg': { key: stripKey, type: 'image/jpeg' },
  'photo.jpg': { key: photoKey, type: 'image/jpeg' },
  'frames.json': { key: framesKey, type: 'application/json' },
} as const;
export type MediaFile = keyof typeof mediaFiles;

/** The address of a media file; every request for it is checked again. */
export const mediaPath = (clipId: string, file: MediaFile): string => `/media/clips/${clipId}/${file}`;
/** The address of the sound of a talk-through. */
export const talkPath = (talkId: string): string => `/media/talk-throughs/${talkId}/sound`;
