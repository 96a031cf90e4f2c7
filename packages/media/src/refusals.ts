/** Why a clip is refused: a closed list. The order is the order in which they are looked for. */
export const refusalCodes = [
  'empty',
  'too_large',
  'not_video',
  'container_not_allowed',
  'truncated',
  'protected',
  'no_video',
  'codec_not_allowed',
  'too_long',
] as const;
export type RefusalCode = (typeof refusalCodes)[number];

const sentences: Readonly<Record<RefusalCode, string>> = {
  empty: 'This file has nothing in it. Please choose the video again.',
  too_large: 'This video is too big for us. Please film at 1080p, or send a shorter piece.',
  not_video: 'This file is not a video we can open. Please send the clip straight from your phone.',
  container_not_allowed: 'We can read MP4 and MOV videos. Please send the clip as your phone recorded it.',
  truncated: 'The end of this video is missing. Please let the phone finish saving it and send it again.',
  protected: 'This video is locked against copying. Please send one that you filmed yourself.',
  no_video: 'There is sound in this file but no picture. Please choose the video of your swing.',
  codec_not_allowed:
    'Your camera saved this video in a way we cannot read. Please choose the most compatible setting.',
  too_long: 'This video is too long. Please trim it to one swing, from set-up to finish, and send that.',
};

/** What a student reads when a clip is refused: what is wrong and what to do instead. */
export const refusalSentence = (code: RefusalCode): string => sentences[code];

/** Thrown inside this package when a clip must be refused; `prepareClip` turns it into a value. */
export class Refused extends Error {
  readonly code: RefusalCode;

  constructor(code: RefusalCode, detail = '') {
    super(detail === '' ? code : `${code}: ${detail}`);
    this.name = 'Refused';
    this.code = code;
  }
}
