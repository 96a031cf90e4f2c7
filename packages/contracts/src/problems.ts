/**
 * The closed set of things that can go wrong, each with its HTTP status and the sentence that says what to do next.
 * RFC 9457: `type` is `urn:ballfirst:<code>`.
 */
export const problems = {
  'bad-request': [400, 'Something in the request is missing or not in the right form.'],
  'not-signed-in': [401, 'You are signed out. Sign in again; what you typed is kept on this device.'],
  'wrong-sign-in': [401, 'That address and password do not go together. Check both and try again.'],
  'choose-academy': [403, 'You belong to more than one academy. Choose one first.'],
  'not-allowed': [403, 'Your role does not open this.'],
  'wrong-origin': [403, 'This request came from another site and was refused.'],
  'consent-missing': [403, 'A guardian must consent before a junior can send a video.'],
  'not-found': [404, 'There is nothing here for you under this address.'],
  'link-used-up': [410, 'This link has been used or is too old. Ask for a new one.'],
  'last-manager': [409, 'An academy needs a manager. Make somebody else a manager first.'],
  'already-claimed': [409, 'Another coach has this swing. Choose the next one.'],
  'not-claimed': [409, 'Claim this swing before you work on it.'],
  'already-answered': [409, 'This swing has been answered already.'],
  'already-a-member': [409, 'You are a member of this academy already. Sign in instead.'],
  'wrong-state': [
    409,
    'This cannot be done now: something has changed since you looked. Load the page again.',
  ],
  'same-key-at-work': [409, 'The same request is still being worked on. Wait a moment and try again.'],
  'upload-elsewhere': [
    409,
    'This video went on from another place meanwhile. It goes on by itself from where it is now.',
  ],
  'changed-meanwhile': [
    412,
    'Somebody changed this since you opened it. Load it again; your own text is kept.',
  ],
  'too-large': [413, 'That is larger than we can take. The limit for a video is 500 MB.'],
  'not-a-video': [415, 'That file is not a video. Choose the video that your phone recorded.'],
  'not-a-photo': [
    415,
    'That file is not a photo. Choose a JPEG, PNG or WebP photo of your hands on the grip.',
  ],
  'key-used-otherwise': [422, 'This key was used for another request. Send the form again.'],
  'tally-over-total': [
    422,
    'The misses add up to more balls than you hit. Take some away or raise the number of balls.',
  ],
  'tally-empty': [422, 'Tap at least one ball, so that your coach knows what happens.'],
  'clip-not-yours': [422, 'That video is not one of yours, or it was removed. Choose the file again.'],
  'clip-missing': [422, 'Add a video of your swing before you send.'],
  'mark-outside-frame': [
    422,
    'A mark lies outside the picture or on a frame that the clip does not have. Place it again.',
  ],
  'too-much-at-once': [
    422,
    'One movement and up to three set-up ticks are what a player can work on. Take some away, or say that you are sure.',
  ],
  'thread-full': [409, 'Your coach answers first. For something new, send a swing.'],
  'standing-not-possible': [422, 'A student cannot change from this standing to that one.'],
  'practice-not-possible': [422, 'Clean strikes cannot be more than the balls you hit.'],
  'practice-held': [
    409,
    'Practice is on hold because of pain. Stop, see a clinician, and tell your coach when you are well.',
  ],
  'upload-busy': [423, 'This video is on its way from another tab or phone. Let it go on there.'],
  'precondition-missing': [428, 'Say which version you changed (If-Match).'],
  'too-many-tries': [429, 'Too many tries. Wait a few minutes and try again.'],
  unexpected: [500, 'Something went wrong on our side. Nothing you sent was lost; try again in a moment.'],
  busy: [503, 'The service is busy. Try again in a few seconds.'],
  'no-room': [507, 'There is no room for more video just now. What has arrived is kept; try again later.'],
} as const satisfies Record<string, readonly [number, string]>;

export type ProblemCode = keyof typeof problems;
export const problemCodes = Object.keys(problems) as [ProblemCode, ...ProblemCode[]];

/** The body of every error answer (RFC 9457, application/problem+json); its schema is in `problem-body.ts`. */
export type Problem = {
  type: string;
  title: string;
  status: number;
  code: ProblemCode;
  detail: string;
  requestId: string;
  /** Which fields are wrong, in words. */
  fields?: { path: string; message: string }[] | undefined;
};

/** Thrown by verbs; the door turns it into a problem answer. */
export class ProblemError extends Error {
  readonly code: ProblemCode;
  readonly fields: readonly { path: string; message: string }[];
  constructor(code: ProblemCode, detail?: string, fields: readonly { path: string; message: string }[] = []) {
    super(detail ?? problems[code][1]);
    this.name = 'ProblemError';
    this.code = code;
    this.fields = fields;
  }
}
