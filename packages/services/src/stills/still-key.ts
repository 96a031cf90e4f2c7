type Of = { readonly academyId: string; readonly replyId: string };

/** A reply shows so many frames at most. */
export const stillsAtMost = 6;

/** Where the picture of a reply's frame lies, counted from 0. */
export const stillKey = ({ academyId, replyId }: Of, index: number): string =>
  `${academyId}/replies/${replyId}/still-${index}.jpg`;

/** Its address; every request for it is checked again. */
export const stillPath = (replyId: string, index: number): string => `/media/replies/${replyId}/${index}.jpg`;
