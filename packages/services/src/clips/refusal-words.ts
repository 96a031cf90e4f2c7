/** Why a clip was refused by the machine, and what to do instead, as a golfer understands it. */
const refused: Readonly<Record<string, string>> = {
  empty: 'This file has nothing in it. Choose the video again.',
  too_large: 'This video is larger than we can read. Film at 1080p, or send a shorter piece.',
  not_video: 'This file is not a video, whatever its name says. Choose the video your phone recorded.',
  container_not_allowed: 'We read MP4 and MOV videos. Send the video as your phone recorded it.',
  truncated:
    'The end of this video is missing. Play it on your phone to the end; if it stops early, film again.',
  protected: 'This video is locked against copying. Send one that you filmed yourself.',
  no_video: 'This file has sound but no picture. Choose the video of your swing.',
  codec_not_allowed:
    'We cannot read this kind of video. Choose the most compatible kind in your camera settings.',
  too_long: 'This video is too long. Cut it to the one swing, from set-up to finish, and send that.',
  expired: 'This video never arrived in full. Choose the file again and keep the page open until it is sent.',
  photo_empty: 'This file has nothing in it. Choose the photo again.',
  photo_too_large:
    'This photo is larger than we can read: up to 20 MB and 12 000 pixels a side. Take it at your camera’s usual size.',
  not_photo: 'This file is not a photo, whatever its name says. Choose a photo of your hands on the grip.',
  photo_kind:
    'We read JPEG, PNG and WebP photos. Phones that write HEIC have a “most compatible” setting, or send a screenshot of the photo.',
  photo_too_small: 'This photo is too small to see your fingers. Take it again with your camera.',
  photo_broken: 'This photo does not open: a part of it is missing or damaged. Take it again.',
  photo_expired: 'This photo never arrived in full.',
  photo_erased:
    'This photo was removed: another one took its place, or the guardian’s consent was withdrawn.',
  erased: 'This video was removed, because the guardian’s consent was withdrawn.',
};

/** Why a coach asks to film again. */
const filmAgain: Readonly<Record<string, string>> = {
  'club-out-of-picture':
    'The club leaves the picture. Stand the phone two steps further back and film again.',
  'too-dark': 'The picture is too dark to see the club. Film again with the light behind the phone.',
  'camera-moves': 'The camera moves. Put the phone on a stand and film again.',
  'wrong-angle': 'The camera stands at the wrong angle. Look at the drawing, move it, and film again.',
  'cut-short': 'The video starts too late or ends too early. Film from set-up to finish.',
  'too-far': 'You are too small in the picture. Bring the phone nearer and film again.',
};

/** The sentence for a code; one that we do not know gets the plainest answer. */
export const refusalWords = (code: string): string =>
  refused[code] ??
  filmAgain[code] ??
  'This video cannot be used. Film again, or send it once more from your phone.';
