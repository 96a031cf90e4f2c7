/** Where each role begins. */
export const firstPage = { student: '/home', coach: '/inbox', manager: '/trials' } as const;

/** A path of this site to return to; anything that could lead elsewhere becomes the front page. */
export const ownPath = (next: string | undefined): string =>
  next !== undefined && /^\/(?![/\\])[^\\\s]*$/.test(next) ? next : '/';
