/** Why a clip was refused and what to do instead, as a golfer understands it. */
const sentences = {
  'not-a-video': 'This file is not a video, whatever its name says. Choose the video your phone recorded.',
  'no-picture': 'This file has sound but no picture. Choose the video your phone recorded.',
  'cut-off':
    'The end of this video is missing. Play it on your phone to the end; if it stops early, film again.',
  damaged: 'This video is damaged and cannot be read. Send it again from your phone, or film again.',
  'too-short': 'This video is too short to show a swing. Start filming before you take your stance.',
  'too-long': 'This video is too long. Cut it to the one swing, half a minute at most, and send that.',
  'picture-too-large': 'The picture of this video is larger than we can read. Film at 1080p and send again.',
  'picture-too-small': 'The picture of this video is too small to see the club. Film at 720p or more.',
  'kind-not-read': 'We cannot read this kind of video. Choose MP4 or MOV in your phone’s camera settings.',
  'took-too-long': 'We could not prepare this video in time. Cut it to the one swing and send it again.',
  expired: 'This video never arrived in full. Choose the file again and keep the page open until it is sent.',
} as const;

export type RefusalCode = keyof typeof sentences;
export const refusalCodes = Object.keys(sentences) as [RefusalCode, ...RefusalCode[]];

const isCode = (code: string): code is RefusalCode => Object.hasOwn(sentences, code);

/** The sentence for a code; one that an older version stored gets the plainest answer. */
export const refusalWords = (code: string): string => sentences[isCode(code) ? code : 'damaged'];
