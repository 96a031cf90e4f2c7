/** Marks that are suggested, placed besides, or placed twice; and the way of the clubhead. */
export const hintWords = {
  here: 'Suggested here by the last swing: drag it, click it right, or',
  confirm: 'Confirm it',
  elsewhere: (frame: number) => `By the last swing it lies on frame ${frame}:`,
  go: 'Go there',

  also: 'Another mark: target stick and more',
  point: 'Point',
  moment: 'Moment',
  stick:
    'A stick on the ground along the target line: mark both ends at address. From the front it levels the picture and gives its scale; from behind it tells, with the tips of both shoes, where the feet aim.',
  markThis: 'Mark this',

  twice: 'Mark twice: how sure is my hand?',
  twiceLead: (again: number, of: number) =>
    `Once more without seeing the first: ${again} of ${of}. Nothing is stored until you choose.`,
  doubt: (marks: number, px: string, assumed: string) =>
    `By ${marks} marks one click of yours is ${px} pixels off each way; ${assumed} are reckoned with.`,
  widest: (name: string, px: string) => `Farthest apart: ${name}, ${px} pixels.`,
  takeHalfWay: 'Take the way half between',
  keepFirst: 'Keep the first',

  trail: 'Clubhead over frames: the arc',
  trailLead:
    'Begin a few frames before the ball. Each click places the clubhead and goes one frame on; three frames and both sides of the ball are needed.',
  trailOn: 'Click the clubhead, frame by frame',
  trailOff: 'Stop',
  trailBack: 'Take the last one away',
  trailClear: 'Take all away',
  trailCount: (count: number) => `${count} ${count === 1 ? 'frame' : 'frames'} marked.`,
  trailPoint: (frame: number) => `Clubhead on frame ${frame}`,
  trailAsks: 'Place clubhead on this frame',
  lowPoint: (side: 'ahead of' | 'behind', mm: number, u: number) =>
    `Lowest point of the arc ${mm} ± ${u} mm ${side} the ball.`,
  arcOpen: 'Place ball and stick at address first: ',
} as const;
