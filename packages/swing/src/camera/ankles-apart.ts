import { ankles } from '../definitions/definition.ts';
import type { PlacedMarks } from '../marks/placed-marks.ts';

/** Whether the lead ankle stands clear of the trail ankle on the target side, so that a share of their distance means something. */
export function anklesApart(marks: PlacedMarks): boolean {
  const lead = marks.at(ankles.lead);
  const trail = marks.at(ankles.trail);
  return (
    lead !== undefined && trail !== undefined && lead.levelPx - trail.levelPx > 5 * (lead.uPx + trail.uPx)
  );
}
