/** The part of the picture that is shown, in pixels of the picture. */
export type Part = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** Draws a picture, or a part of it, over a whole canvas. */
export const drawPicture = (canvas: HTMLCanvasElement, picture: ImageBitmap, part?: Part): void => {
  const { width, height } = canvas;
  const shown = part ?? { x: 0, y: 0, width: picture.width, height: picture.height };
  canvas
    .getContext('2d')
    ?.drawImage(picture, shown.x, shown.y, shown.width, shown.height, 0, 0, width, height);
};
