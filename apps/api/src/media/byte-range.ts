export type ByteRange = { readonly start: number; readonly end: number };

/**
 * The one range a request asks for (RFC 9110, 14.1.2), both ends included.
 * @returns null: answer with everything (no range, more than one, another unit or not in the form);
 *   'outside': nothing of it exists, 416
 */
export const byteRange = (header: string | undefined, size: number): ByteRange | 'outside' | null => {
  const found = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '');
  const [, from = '', to = ''] = found ?? [];
  if (!found || (from === '' && to === '')) return null;
  if (from === '') {
    const last = Math.min(Number(to), size);
    return last === 0 ? 'outside' : { start: size - last, end: size - 1 };
  }
  const start = Number(from);
  const end = to === '' ? size - 1 : Math.min(Number(to), size - 1);
  if (to !== '' && Number(to) < start) return null;
  return start >= size ? 'outside' : { start, end };
};
