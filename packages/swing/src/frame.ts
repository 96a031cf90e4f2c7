import type { Hand, Picture } from './marks.ts';

/*
 * The frame of this package, face-on, for either hand:
 *
 *                 up
 *                  ^        head-centre
 *                  |            o
 *                  |      hip-middle o        depth: from the ball
 *                  |                          towards the player,
 *    trail ankle o |   o lead ankle           away from the camera
 *   ---------------+------o-------------> along, towards the target
 *                        ball
 *
 * Pixels count from the middle of the picture, where the lens points. A right-handed player's target lies to the
 * right in the picture; a left-handed player's coordinates are mirrored here, once. The picture itself never is.
 */
export type FramePoint = { readonly alongPx: number; readonly upPx: number };

/**
 * A point of the picture in the frame of the swing.
 *
 * @param pixel - x right, y down, from the top left corner, in pixels
 * @returns along (towards the target) and up, in pixels from the middle of the picture
 * @example toFrame({ x: 1000, y: 500 }, { widthPx: 1080, heightPx: 1920, frameTimesS: [] }, 'right') // { alongPx: 460, upPx: 460 }
 */
export function toFrame(
  pixel: { readonly x: number; readonly y: number },
  picture: Picture,
  hand: Hand,
): FramePoint {
  const right = pixel.x - picture.widthPx / 2;
  return { alongPx: hand === 'right' ? right : -right, upPx: picture.heightPx / 2 - pixel.y };
}
