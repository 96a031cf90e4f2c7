/**
 * Why a clip is refused: a closed list, in the order in which the reasons are looked for. The words for a student stand
 * in `services` (clips/refusal-words.ts).
 */
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

/** Thrown inside this package when a clip must be refused; `prepareClip` turns it into a value. */
export class Refused extends Error {
  readonly code: RefusalCode;

  constructor(code: RefusalCode, detail = '') {
    super(detail === '' ? code : `${code}: ${detail}`);
    this.name = 'Refused';
    this.code = code;
  }
}
