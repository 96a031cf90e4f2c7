/** Of every drawn photo of a grip. */
export const gripSize = { widthPx: 900, heightPx: 1200 } as const;
