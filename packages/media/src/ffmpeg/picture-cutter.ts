/** Cuts a stream of bytes into pictures of one size; each is a copy of its own. */
export function pictureCutter(sizeBytes: number, take: (rgb: Buffer) => void): (bytes: Buffer) => void {
  let open = Buffer.alloc(sizeBytes);
  let filled = 0;
  return (bytes) => {
    for (let at = 0; at < bytes.length; ) {
      const copied = bytes.copy(open, filled, at);
      at += copied;
      filled += copied;
      if (filled < sizeBytes) continue;
      take(open);
      open = Buffer.alloc(sizeBytes);
      filled = 0;
    }
  };
}
