import type { Hand, Picture, View } from '../marks/marks.ts';

/*
 * The two frames of this package, in the plane of the picture, for either hand. `level` and `up` are + along the arrows;
 * depth counts from the ball away from the camera.
 *
 *   face-on                                       down-the-line (seen from behind, the target lies beyond)
 *
 *                 up                                                           up
 *                  ^        head-centre                          head-centre    ^
 *                  |            o                                        o      |
 *                  |      hip-middle o                     seat-line |    hands o
 *                  |                                                 |      \   |
 *    trail ankle o |   o lead ankle                            toe-line o     \ |
 *   ---------------+------o-------> level        level <---------------o-------o---------------
 *                        ball                                                 ball
 *   level: towards the target                    level: away from the ball line, towards the player
 *   depth: towards the player                    depth: towards the target
 *
 * Pixels count from the middle of the picture, where the lens points. A right-handed player's target lies to the right
 * of a face-on picture, and his body to the left of a picture from behind. A left-hander's coordinates are mirrored
 * here, once; the picture itself never is.
 */
export type FramePoint = { readonly levelPx: number; readonly upPx: number };

/**
 * A point of the picture in the frame of the swing.
 *
 * @param pixel - x right, y down, from the top left corner, in pixels
 * @param view - face-on: level is towards the target; down-the-line: level is away from the ball line
 * @returns level and up, in pixels from the middle of the picture
 * @example toFrame({ x: 1000, y: 500 }, { widthPx: 1080, heightPx: 1920, frameTimesS: [] }, 'right', 'face-on') // { levelPx: 460, upPx: 460 }
 */
export function toFrame(
  pixel: { readonly x: number; readonly y: number },
  picture: Picture,
  hand: Hand,
  view: View,
): FramePoint {
  const right = pixel.x - picture.widthPx / 2;
  const mirrored = (hand === 'left') !== (view === 'down-the-line');
  return { levelPx: mirrored ? -right : right, upPx: picture.heightPx / 2 - pixel.y };
}
